/* The library that writes workbooks does not notice a full disk while it makes the parts: the package can be a good ZIP
 * file with half a sheet in it.  So each file is read again before anybody gets it. */
#include "package.h"

#include <minizip/unzip.h>
#include <stdint.h>
#include <string.h>

enum { NAME_MOST = 256 };
static const size_t PART_MOST = (size_t)64 * 1024 * 1024;

struct part {
    char name[NAME_MOST];
    char *text;
    size_t length;
};
struct walk {
    struct arena *arena;
    unzFile zip;
    char *room; /* for one part at a time, the largest so far */
    size_t capacity;
    uint64_t digest;                       /* of all parts but docProps */
    char noted[PACKAGE_DIGEST_LENGTH + 1]; /* the digest in the file's properties, or "" */
    bool check_whole;
};

/* FNV-1a, 64 bits: tells an edited file from ours; it is no guard against forgery. */
static uint64_t fnv(uint64_t hash, const char *bytes, size_t length)
{
    for (size_t i = 0; i < length; i++) {
        hash ^= (unsigned char)bytes[i];
        hash *= UINT64_C(1099511628211);
    }
    return hash;
}

static const char *skip_blanks(const char *p, const char *end)
{
    while (p < end && (*p == ' ' || *p == '\n' || *p == '\r' || *p == '\t'))
        p++;
    return p;
}

static bool is_blank(char c)
{
    return c == ' ' || c == '\n' || c == '\r' || c == '\t';
}

bool xml_is_whole(const char *text, size_t length)
{
    const char *p = skip_blanks(text, text + length), *end = text + length;
    while (end > p && is_blank(end[-1]))
        end--;
    if (end - p > 2 && p[0] == '<' && p[1] == '?') {
        while (p + 1 < end && !(p[0] == '?' && p[1] == '>'))
            p++;
        p = skip_blanks(p + 2 <= end ? p + 2 : end, end);
    }
    if (end - p < 3 || *p != '<' || end[-1] != '>')
        return false;
    size_t n = 0;
    const char *name = p + 1;
    while (name + n < end && !is_blank(name[n]) && name[n] != '>' && name[n] != '/')
        n++;
    if (!n)
        return false;
    if (end[-2] == '/') /* one empty element: it is the whole part */
        return !memchr(name, '>', (size_t)(end - name - 1));
    return (size_t)(end - name) > n + 3 && !memcmp(end - n - 3, "</", 2) && !memcmp(end - n - 1, name, n);
}

static bool is_xml(const char *name)
{
    size_t n = strlen(name);
    return (n > 4 && !strcmp(name + n - 4, ".xml")) || (n > 5 && !strcmp(name + n - 5, ".rels"));
}

static void make_room(struct walk *walk, size_t length)
{
    if (length < walk->capacity)
        return;
    walk->capacity = length + length / 2 + 1;
    walk->room = arena_alloc(walk->arena, walk->capacity);
}

static const char *read_part(struct walk *walk, struct part *part)
{
    unz_file_info64 info;
    if (unzGetCurrentFileInfo64(walk->zip, &info, part->name, sizeof part->name, NULL, 0, NULL, 0) != UNZ_OK)
        return "the package cannot be read";
    if (info.uncompressed_size > PART_MOST || info.size_filename >= sizeof part->name)
        return "a part of the package is too large";
    part->length = (size_t)info.uncompressed_size;
    make_room(walk, part->length);
    part->text = walk->room;
    if (unzOpenCurrentFile(walk->zip) != UNZ_OK)
        return "a part of the package cannot be opened";
    size_t got = 0;
    int n = 1;
    while (got < part->length && n > 0) {
        size_t want = part->length - got < 1048576 ? part->length - got : 1048576;
        n = unzReadCurrentFile(walk->zip, part->text + got, (unsigned)want);
        got += n > 0 ? (size_t)n : 0;
    }
    int closed = unzCloseCurrentFile(walk->zip); /* UNZ_CRCERROR when the contents do not match */
    return got == part->length && closed == UNZ_OK ? NULL : "a part of the package is damaged";
}

/* The digest stands in docProps/custom.xml as <property ... name="sawbill digest"><vt:lpwstr>...</vt:lpwstr>. */
static void note_digest(struct walk *walk, const struct part *part)
{
    static const char key[] = "name=\"" PACKAGE_DIGEST_NAME "\"><vt:lpwstr>";
    size_t n = sizeof key - 1;
    for (size_t i = 0; i + n + PACKAGE_DIGEST_LENGTH <= part->length; i++)
        if (!memcmp(part->text + i, key, n)) {
            memcpy(walk->noted, part->text + i + n, PACKAGE_DIGEST_LENGTH);
            return;
        }
}

static const char *take_part(struct walk *walk, const struct part *part)
{
    if (walk->check_whole && is_xml(part->name) && !xml_is_whole(part->text, part->length))
        return arena_printf(walk->arena, "'%s' in it breaks off", part->name);
    if (!strncmp(part->name, "docProps/", 9)) {
        note_digest(walk, part);
        return NULL;
    }
    walk->digest = fnv(walk->digest, part->name, strlen(part->name) + 1);
    walk->digest = fnv(walk->digest, part->text, part->length);
    return NULL;
}

static const char *walk_parts(struct walk *walk, const char *file)
{
    walk->digest = UINT64_C(14695981039346656037);
    walk->zip = unzOpen64(file);
    if (!walk->zip)
        return "it is not a whole package";
    const char *why = NULL;
    int step = unzGoToFirstFile(walk->zip);
    while (step == UNZ_OK && !why) {
        struct part part = {.text = NULL};
        why = read_part(walk, &part);
        if (!why)
            why = take_part(walk, &part);
        step = unzGoToNextFile(walk->zip);
    }
    if (!why && step != UNZ_END_OF_LIST_OF_FILE)
        why = "the list of parts is damaged";
    (void)unzClose(walk->zip); /* it was only read */
    return why;
}

static void digest_text(uint64_t digest, char out[PACKAGE_DIGEST_LENGTH + 1])
{
    for (int i = 0; i < PACKAGE_DIGEST_LENGTH; i++)
        out[i] = "0123456789abcdef"[digest >> (60 - 4 * i) & 15];
    out[PACKAGE_DIGEST_LENGTH] = '\0';
}

const char *package_check(struct arena *arena, const char *file, char digest[PACKAGE_DIGEST_LENGTH + 1])
{
    struct walk walk = {.arena = arena, .check_whole = true};
    const char *why = walk_parts(&walk, file);
    digest_text(walk.digest, digest);
    return why;
}

bool package_untouched(struct arena *arena, const char *file)
{
    struct walk walk = {.arena = arena};
    char digest[PACKAGE_DIGEST_LENGTH + 1];
    if (walk_parts(&walk, file))
        return false;
    digest_text(walk.digest, digest);
    return !strcmp(digest, walk.noted);
}
