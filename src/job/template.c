/* A job file to start from: a small flush beam under a bedroom floor, every key explained by its row of the table. */
#include <string.h>

#include "job_internal.h"

/* A line with a key belongs to the section above it; a note stands before a section. */
struct line {
    const char *section, *key, *value, *note;
};
/* In the order of a walk through the house. */
static const struct line lines[] = {
    {.section = "job", .note = "THE JOB"},
    {.key = "name", .value = "Study wall"},
    {.key = "date", .value = "2026-01-15", .note = "change me"},
    {.key = "catalogs", .value = "../catalogs"},
    {.key = "scope", .value = "Remove 9 ft of bearing wall, set a flush beam, patch the ceiling"},
    {.key = "exclude", .value = "Paint beyond the patches"},
    {.key = "unusual", .value = "none"},
    {.section = "area bedroom", .note = "WHAT IS ABOVE: the loads, the roof, the joists on each side"},
    {.key = "dead", .value = "12 psf"},
    {.key = "live", .value = "30 psf"},
    {.key = "live is", .value = "sleeping"},
    {.section = "roof"},
    {.key = "frame", .value = "none above"},
    {.section = "joists north", .note = "Face A of the beam."},
    {.key = "kind", .value = "sawn joist"},
    {.key = "size", .value = "2x10"},
    {.key = "measured depth", .value = "9-1/4 in"},
    {.key = "spacing", .value = "16 in"},
    {.key = "first joist", .value = "8 in"},
    {.key = "run", .value = "11 ft 4 in"},
    {.key = "over the wall", .value = "lapped"},
    {.key = "ties the roof", .value = "no"},
    {.key = "area", .value = "area bedroom"},
    {.section = "joists south", .note = "Face B of the beam."},
    {.key = "kind", .value = "sawn joist"},
    {.key = "size", .value = "2x10"},
    {.key = "measured depth", .value = "9-1/4 in"},
    {.key = "spacing", .value = "16 in"},
    {.key = "first joist", .value = "8 in"},
    {.key = "run", .value = "9 ft 10 in"},
    {.key = "over the wall", .value = "lapped"},
    {.key = "ties the roof", .value = "no"},
    {.key = "area", .value = "area bedroom"},
    {.section = "wall W1", .note = "WHAT COMES OUT"},
    {.key = "status", .value = "comes out"},
    {.key = "under", .value = "beam B1"},
    {.key = "length", .value = "9 ft"},
    {.key = "height", .value = "8 ft 1 in"},
    {.key = "studs", .value = "2x4"},
    {.key = "finish A", .value = "gypsum board"},
    {.key = "finish B", .value = "gypsum board"},
    {.key = "bracing", .value = "no"},
    {.section = "beam B1", .note = "WHAT GOES IN: end 1 and end 2, face A and face B, painted on the beam"},
    {.key = "set", .value = "flush"},
    {.key = "clear span", .value = "8 ft 6 in"},
    {.key = "joists A", .value = "joists north"},
    {.key = "joists B", .value = "joists south"},
    {.key = "above", .value = "nothing"},
    {.key = "end 1", .value = "post P1"},
    {.key = "wall at end 1", .value = "across"},
    {.key = "end 2", .value = "post P2"},
    {.key = "wall at end 2", .value = "across"},
    {.key = "choose", .value = "yes"},
    {.key = "most plies", .value = "3"},
    {.key = "most depth", .value = "9-1/2 in"},
    {.key = "ply fasteners", .value = "NAIL-16D-COMMON"},
    {.key = "rows", .value = "3"},
    {.key = "spacing", .value = "12 in"},
    {.key = "each face", .value = "yes"},
    {.section = "post P1", .note = "WHAT CARRIES IT, down to the ground"},
    {.key = "member", .value = "SPF-STUD-2X4"},
    {.key = "plies", .value = "3"},
    {.key = "height", .value = "7 ft 3-1/2 in"},
    {.key = "braced", .value = "both"},
    {.key = "stands on", .value = "block K1"},
    {.section = "post P2"},
    {.key = "member", .value = "SPF-STUD-2X4"},
    {.key = "plies", .value = "3"},
    {.key = "height", .value = "7 ft 3-1/2 in"},
    {.key = "braced", .value = "both"},
    {.key = "stands on", .value = "block K2"},
    {.section = "block K1"},
    {.key = "depth", .value = "9-1/4 in"},
    {.key = "stands on", .value = "foundation wall, seen"},
    {.section = "block K2"},
    {.key = "depth", .value = "9-1/4 in"},
    {.key = "stands on", .value = "foundation wall, seen"},
    {.section = "shore A", .note = "WHO HOLDS THE HOUSE while the wall is out: a shore on each side"},
    {.key = "holds", .value = "joists north"},
    {.key = "set back", .value = "3 ft"},
    {.key = "studs", .value = "SPF-STUD-2X4"},
    {.key = "plates", .value = "SPF2-2X4"},
    {.key = "height", .value = "7 ft 9 in"},
    {.key = "brace rows", .value = "1"},
    {.key = "stands on", .value = "floor over a crawl space, cribbed below"},
    {.key = "days", .value = "4"},
    {.section = "shore B"},
    {.key = "holds", .value = "joists south"},
    {.key = "set back", .value = "3 ft"},
    {.key = "studs", .value = "SPF-STUD-2X4"},
    {.key = "plates", .value = "SPF2-2X4"},
    {.key = "height", .value = "7 ft 9 in"},
    {.key = "brace rows", .value = "1"},
    {.key = "stands on", .value = "floor over a crawl space, cribbed below"},
    {.key = "days", .value = "4"},
    {.section = "buy permit", .note = "WHAT THE CATALOGS DO NOT COUNT"},
    {.key = "what", .value = "building permit"},
    {.key = "price", .value = "$240.00"},
    {.key = "class", .value = "fees"},
    {.key = "own markup", .value = "0 %"},
    {.section = "sub electrician"},
    {.key = "what", .value = "move one outlet circuit"},
    {.key = "price", .value = "$420.00"},
    {.section = "bid", .note = "THE PRICE"},
    {.key = "method", .value = "compound"},
    {.key = "overhead", .value = "12 %"},
    {.key = "contingency", .value = "5 %"},
    {.key = "profit", .value = "10 %"},
    {.key = "tax", .value = "7 %"},
    {.key = "round price to", .value = "$1"},
    {.key = "valid for", .value = "30 days"},
    {.key = "forgotten zero", .value = "insulation put back: none between two heated floors"},
    {.key = "forgotten zero", .value = "engineer's visit: no engineer is on this job"},
    {.key = "forgotten excluded", .value = "minimum crew day"},
    {.key = "forgotten excluded", .value = "second inspection"},
    {.key = "forgotten excluded", .value = "floor patch where the plate stood"},
    {.key = "forgotten excluded", .value = "lead and asbestos test: the owner has it done"},
    {.key = "draws", .value = "30 % on signing"},
    {.key = "draws", .value = "50 % when the beam is on its posts"},
    {.key = "draws", .value = "20 % when the ceiling is patched"},
};

static const char head[] =
    "; A job file to start from: change it to your house, then run 'sawbill check' on it.\n"
    "; A comment stands on a line of its own. 'sawbill keys' explains every key.\n"
    "; Lengths: 12 ft 3 in, 12' 3\", 9-1/2 in, 3.7 m. Nothing here replaces a permit, the local\n"
    "; code or a licensed professional.\n";

static void add_explanation(struct buffer *out, const struct key_row *row)
{
    buffer_printf(out, "; %s", row->help);
    if (row->fallback)
        buffer_printf(out, " (without it: %s)", row->fallback);
    buffer_add(out, "\n");
    for (size_t i = 0; row->of && i < row->of->count; i++)
        buffer_printf(out, "%s%s%s", i ? " | " : ";   ", row->of->word[i], i + 1 == row->of->count ? "\n" : "");
}

/* Has this key of this kind been explained above? */
static bool explained(size_t number, enum kind kind, const char *key, struct arena *arena)
{
    enum kind now = KIND_JOB;
    for (size_t i = 0; i < number; i++) {
        char *word = NULL;
        char *id = NULL;
        if (lines[i].section) {
            section_split(arena, lines[i].section, &word, &id);
            (void)kind_find(word, &now); /* the table names kinds only */
        } else if (now == kind && strcmp(lines[i].key, key) == 0) {
            return true;
        }
    }
    return false;
}

char *job_template(struct arena *arena)
{
    struct buffer out = {.arena = arena};
    enum kind kind = KIND_JOB;
    buffer_add(&out, head);
    for (size_t i = 0; i < sizeof lines / sizeof *lines; i++) {
        const struct line *line = &lines[i];
        if (line->section) {
            char *word = NULL;
            char *id = NULL;
            section_split(arena, line->section, &word, &id);
            (void)kind_find(word, &kind); /* the table names kinds only */
            buffer_add(&out, "\n");
            if (line->note)
                buffer_printf(&out, "; %s\n", line->note);
            buffer_printf(&out, "[%s]\n", line->section);
            continue;
        }
        if (!explained(i, kind, line->key, arena))
            add_explanation(&out, key_find(kind, line->key));
        if (line->note)
            buffer_printf(&out, "; %s\n", line->note);
        buffer_printf(&out, "%s = %s\n", line->key, line->value);
    }
    return out.text;
}
