/* One plain house, sized by the library, for code rows that show only in a whole job. */
#ifndef SAWBILL_TESTS_PUBLISHED_HOUSE_H
#define SAWBILL_TESTS_PUBLISHED_HOUSE_H

#include "published.h"

#include "sawbill/design.h"

/* What may be other: the soil under its footing, and what the floor above is ("floor", "attic storage", "roof"). */
struct house {
    const char *soil, *live_is;
};
/* NULL, and a message: the job does not stand. */
const struct design *house_size(struct published *p, const struct house *house);
const struct check *house_check(const struct design *design, const char *member, const char *name); /* NULL: none */

#endif
