/* The one place where files are written. */
#include "safe_write.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "package.h"

enum { NAMES_MOST = 999 };

/* "a/b/bid.xlsx" -> "a/b/"; "bid.xlsx" -> "./" */
static const char *folder_of(struct arena *arena, const char *path)
{
    const char *slash = strrchr(path, '/');
    return slash ? arena_strndup(arena, path, (size_t)(slash - path + 1)) : "./";
}

static const char *base_of(const char *path)
{
    const char *slash = strrchr(path, '/');
    return slash ? slash + 1 : path;
}

/* strerror() answers in the language of the caller's locale and from a shared buffer: the few that happen, in words. */
static const char *reason(int error)
{
    static const struct {
        int error;
        const char *text;
    } known[] = {
        {ENOENT, "no such folder"},
        {ENOTDIR, "a part of the path is not a folder"},
        {EACCES, "permission denied"},
        {EPERM, "permission denied"},
        {EROFS, "the disk is read-only"},
        {ENOSPC, "no space left on the disk"},
        {EDQUOT, "the disk quota is used up"},
        {EFBIG, "the file would be larger than allowed"},
        {EISDIR, "it is a folder"},
        {ENAMETOOLONG, "the name is too long"},
        {ELOOP, "links that go round in a circle"},
        {EIO, "the disk failed"},
    };
    for (size_t i = 0; i < sizeof known / sizeof *known; i++)
        if (known[i].error == error)
            return known[i].text;
    return "the system refused it";
}

/* Is there something at path that a rename must not replace: a folder, a device? */
static bool is_in_the_way(const char *path, const char **why)
{
    struct stat info;
    if (stat(path, &info) != 0 || S_ISREG(info.st_mode))
        return false;
    *why = S_ISDIR(info.st_mode) ? "it is a folder" : "it is not an ordinary file";
    return true;
}

/* A new file beside path, of a name that nobody has; its rights as the user's umask says.  -1: *why. */
static int open_beside(struct arena *arena, const char *path, const char **name, const char **why)
{
    for (int i = 1; i <= NAMES_MOST; i++) {
        *name = arena_printf(arena, "%s.%s.part%d", folder_of(arena, path), base_of(path), i);
        int file = open(*name, O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0666);
        if (file >= 0)
            return file;
        if (errno != EEXIST) {
            *why = reason(errno);
            return -1;
        }
    }
    *why = "too many unfinished files lie beside it";
    return -1;
}

/* Flushed to the disk, then renamed; the folder is flushed as well where the system can. */
static bool settle(struct arena *arena, const char *temporary, const char *path, const char **why)
{
    int file = open(temporary, O_RDONLY | O_CLOEXEC);
    bool good = file >= 0 && fsync(file) == 0;
    int error = errno;
    if (file >= 0)
        (void)close(file); /* opened for reading only */
    if (good && rename(temporary, path) != 0) {
        good = false;
        error = errno;
    }
    if (!good) {
        *why = reason(error);
        return false;
    }
    int folder = open(folder_of(arena, path), O_RDONLY | O_CLOEXEC);
    if (folder >= 0) {
        (void)fsync(folder); /* not every file system can; the file itself is on the disk */
        (void)close(folder);
    }
    return true;
}

static bool write_bytes(int file, const char *text, size_t length, int *error)
{
    while (length > 0) {
        ssize_t n = write(file, text, length);
        if (n < 0 && errno == EINTR)
            continue;
        if (n <= 0) {
            *error = n < 0 ? errno : ENOSPC;
            return false;
        }
        text += n;
        length -= (size_t)n;
    }
    return true;
}

enum write_status report_text(struct arena *arena, const char *path, const char *text, const char **why)
{
    if (is_in_the_way(path, why))
        return WRITE_FILE_FAULT;
    const char *temporary = NULL;
    int file = open_beside(arena, path, &temporary, why);
    if (file < 0)
        return WRITE_FILE_FAULT;
    int error = 0;
    bool good = write_bytes(file, text, strlen(text), &error);
    if (close(file) != 0 && good) {
        good = false;
        error = errno;
    }
    if (!good)
        *why = reason(error);
    if (good && settle(arena, temporary, path, why))
        return WRITE_DONE;
    (void)unlink(temporary);
    return WRITE_FILE_FAULT;
}

/* "bid.xlsx", 2 -> "bid-r2.xlsx" */
static const char *revision_name(struct arena *arena, const char *path, int revision)
{
    const char *dot = strrchr(base_of(path), '.');
    size_t stem = dot && dot != base_of(path) ? (size_t)(dot - path) : strlen(path);
    return arena_printf(arena, "%.*s-r%d%s", (int)stem, path, revision, path + stem);
}

static bool is_free(struct arena *arena, const char *path)
{
    return access(path, F_OK) != 0 || package_untouched(arena, path);
}

static const char *free_name(struct arena *arena, const char *path)
{
    if (is_free(arena, path))
        return path;
    for (int revision = 2; revision <= NAMES_MOST; revision++) {
        const char *name = revision_name(arena, path, revision);
        if (is_free(arena, name))
            return name;
    }
    return NULL;
}

/* Twice: the digest of the parts is known only once they exist, and then goes into the properties, which it leaves
 * out.  The second file must have the same digest. */
static const char *write_checked(const struct book *book, const char *temporary, const char *folder)
{
    char first[PACKAGE_DIGEST_LENGTH + 1] = "", second[PACKAGE_DIGEST_LENGTH + 1] = "";
    const char *why = book_write(book, temporary, folder, PACKAGE_DIGEST_NONE);
    if (!why)
        why = package_check(book->arena, temporary, first);
    if (!why)
        why = book_write(book, temporary, folder, first);
    if (!why)
        why = package_check(book->arena, temporary, second);
    if (!why && strcmp(first, second) != 0)
        why = "it did not come out the same twice";
    return why;
}

enum write_status safe_write_book(const struct book *book, const char *path, const char **written, const char **why)
{
    struct arena *arena = book->arena;
    *written = path;
    if (book->fault) {
        *why = book->fault;
        return WRITE_INTERNAL;
    }
    if (is_in_the_way(path, why))
        return WRITE_FILE_FAULT;
    const char *target = free_name(arena, path);
    if (!target) {
        *why = "too many revisions lie beside it";
        return WRITE_FILE_FAULT;
    }
    const char *temporary = NULL;
    int file = open_beside(arena, target, &temporary, why);
    if (file < 0)
        return WRITE_FILE_FAULT;
    (void)close(file); /* empty: the library opens it again by name */
    *why = write_checked(book, temporary, folder_of(arena, target));
    if (!*why && settle(arena, temporary, target, why)) {
        *written = target;
        return WRITE_DONE;
    }
    (void)unlink(temporary);
    return WRITE_FILE_FAULT;
}
