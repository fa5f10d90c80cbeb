/* Files and ZIP packages, for the tests of what was written. */
#ifndef SAWBILL_TESTS_PACKAGES_H
#define SAWBILL_TESTS_PACKAGES_H

#include <minizip/unzip.h>
#include <minizip/zip.h>
#include <stdbool.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "support.h"

/* A new empty folder of this test. */
static inline const char *new_folder(struct arena *arena)
{
    char *folder = arena_strdup(arena, "/tmp/sawbill-test-XXXXXX");
    assert_non_null(mkdtemp(folder));
    return folder;
}

static inline bool exists(const char *path)
{
    return access(path, F_OK) == 0;
}

static inline char *slurp(struct arena *arena, const char *path, size_t *length)
{
    FILE *file = fopen(path, "rb");
    assert_non_null(file);
    assert_int_equal(fseek(file, 0, SEEK_END), 0);
    *length = (size_t)ftell(file);
    rewind(file);
    char *bytes = arena_alloc(arena, *length + 1);
    assert_int_equal(fread(bytes, 1, *length, file), *length);
    fclose(file);
    return bytes;
}

static inline bool same_bytes(struct arena *arena, const char *a, const char *b)
{
    size_t n, m;
    char *x = slurp(arena, a, &n), *y = slurp(arena, b, &m);
    return n == m && !memcmp(x, y, n);
}

static inline char *current_part(struct arena *arena, unzFile zip, char name[256], size_t *length)
{
    unz_file_info64 info;
    assert_int_equal(unzGetCurrentFileInfo64(zip, &info, name, 256, NULL, 0, NULL, 0), UNZ_OK);
    char *text = arena_alloc(arena, (size_t)info.uncompressed_size + 1);
    *length = (size_t)info.uncompressed_size;
    assert_int_equal(unzOpenCurrentFile(zip), UNZ_OK);
    assert_int_equal(unzReadCurrentFile(zip, text, (unsigned)*length), (int)*length);
    assert_int_equal(unzCloseCurrentFile(zip), UNZ_OK);
    return text;
}

/* The text of one part, or NULL. */
static inline char *part_of(struct arena *arena, const char *path, const char *part)
{
    unzFile zip = unzOpen64(path);
    assert_non_null(zip);
    char name[256];
    size_t length;
    char *text = unzLocateFile(zip, part, 1) == UNZ_OK ? current_part(arena, zip, name, &length) : NULL;
    unzClose(zip);
    return text;
}

/* What a person with a spreadsheet program does, in small: the package again, with one part made different by `edit`.
 */
typedef char *edit_fn(struct arena *arena, char *text, size_t *length);
static inline void repack(struct arena *arena, const char *from, const char *to, const char *part, edit_fn *edit)
{
    unzFile zip = unzOpen64(from);
    zipFile out = zipOpen64(to, APPEND_STATUS_CREATE);
    assert_non_null(zip);
    assert_non_null(out);
    for (int step = unzGoToFirstFile(zip); step == UNZ_OK; step = unzGoToNextFile(zip)) {
        char name[256];
        size_t length;
        char *text = current_part(arena, zip, name, &length);
        if (!strcmp(name, part))
            text = edit(arena, text, &length);
        zip_fileinfo info = {0};
        assert_int_equal(zipOpenNewFileInZip64(out, name, &info, NULL, 0, NULL, 0, NULL, Z_DEFLATED, 6, 0), ZIP_OK);
        assert_int_equal(zipWriteInFileInZip(out, text, (unsigned)length), ZIP_OK);
        assert_int_equal(zipCloseFileInZip(out), ZIP_OK);
    }
    unzClose(zip);
    assert_int_equal(zipClose(out, NULL), ZIP_OK);
}

#endif
