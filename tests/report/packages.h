/* Files and ZIP packages, for the tests of what was written. */
#ifndef SAWBILL_TESTS_PACKAGES_H
#define SAWBILL_TESTS_PACKAGES_H

#include <dirent.h>
#include <minizip/unzip.h>
#include <minizip/zip.h>
#include <stdbool.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "support.h"

/* A new empty folder, where the test program runs: in the build tree, under ctest. */
static inline const char *new_folder(struct arena *arena)
{
    char *folder = arena_printf(arena, "made-%ld-XXXXXX", (long)getpid()); /* tests run side by side */
    assert_non_null(mkdtemp(folder));
    return folder;
}

static inline void remove_folder(const char *folder)
{
    char path[512];
    DIR *open = opendir(folder);
    for (struct dirent *entry = open ? readdir(open) : NULL; entry; entry = readdir(open)) {
        snprintf(path, sizeof path, "%s/%s", folder, entry->d_name);
        (void)unlink(path); /* "." and ".." refuse */
    }
    if (open)
        closedir(open);
    (void)rmdir(folder);
}

/* Teardown of a test: the folders that it made are removed. */
static inline int packages_teardown(void **state)
{
    char ours[32];
    snprintf(ours, sizeof ours, "made-%ld-", (long)getpid());
    DIR *here = opendir(".");
    for (struct dirent *entry = here ? readdir(here) : NULL; entry; entry = readdir(here))
        if (!strncmp(entry->d_name, ours, strlen(ours)))
            remove_folder(entry->d_name);
    if (here)
        closedir(here);
    return support_teardown(state);
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
