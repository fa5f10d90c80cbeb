/* A written workbook looked at again, as the ZIP package of XML parts that it is. */
#ifndef SAWBILL_REPORT_PACKAGE_H
#define SAWBILL_REPORT_PACKAGE_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/arena.h"

#define PACKAGE_DIGEST_NAME "sawbill digest"
enum { PACKAGE_DIGEST_LENGTH = 16 };
/* Stands in the property while the digest is not known yet. */
#define PACKAGE_DIGEST_NONE "0000000000000000"

/* NULL when the file opens and every part of it is whole XML to its last closing tag, else what is wrong.  digest: of
 * the names and contents of all parts but docProps, as 16 hexadecimal digits. */
const char *package_check(struct arena *arena, const char *file, char digest[PACKAGE_DIGEST_LENGTH + 1]);
/* Is the file, byte for byte in every part, as this program wrote it?  Not a workbook, no digest: no. */
bool package_untouched(struct arena *arena, const char *file);
/* Does the text end with the closing tag of its first element (blanks may follow)? */
bool xml_is_whole(const char *text, size_t length);

#endif
