/* The kinds, and how rows of the key table are found.  The rows stand in keys_frame.c, keys_beam.c, keys_support.c,
 * keys_money.c. */
#include <string.h>

#include "job_internal.h"

#define MANY(type, list, number) sizeof(struct type), offsetof(struct job, list), offsetof(struct job, number)
#define ONE(type, member)        sizeof(struct type), offsetof(struct job, member), 0

/* In the order of enum kind. */
static const struct kind_row kinds[KIND_COUNT] = {
    {"job", "the job as a whole", false, &keys_of_job, ONE(job_facts, facts)},
    {"area", "loads of a floor, an attic or a roof, in psf", true, &keys_of_area, MANY(area, areas, area_count)},
    {"roof", "what roof stands above; it may push on the joists or stand on the wall", false, &keys_of_roof,
     ONE(roof, roof)},
    {"joists", "the joists on one side of a beam", true, &keys_of_joists, MANY(joists, joists, joists_count)},
    {"opening", "a hole in a field of joists: a stair, a flue, a hatch", true, &keys_of_opening,
     MANY(opening, openings, opening_count)},
    {"beam", "a beam: new, or an existing one that carries something new", true, &keys_of_beam,
     MANY(beam, beams, beam_count)},
    {"load", "one load on a beam beside its joists: a post, a chimney, a roof that comes down", true, &keys_of_load,
     MANY(load, loads, load_count)},
    {"obstruction", "a member that stands where the beam goes: a rafter tail, a brace, a strut, a nailer", true,
     &keys_of_obstruction, MANY(obstruction, obstructions, obstruction_count)},
    {"post", "a post under a beam end", true, &keys_of_post, MANY(post, posts, post_count)},
    {"block", "squash blocks that carry a post through a floor", true, &keys_of_block,
     MANY(block, blocks, block_count)},
    {"footing", "a footing, existing or new", true, &keys_of_footing, MANY(footing, footings, footing_count)},
    {"wall", "a wall that comes out, or one that stays and weighs on a beam", true, &keys_of_wall,
     MANY(wall, walls, wall_count)},
    {"remove", "an old beam, post or header that comes out", true, &keys_of_remove,
     MANY(removal, removals, removal_count)},
    {"shore", "a shore wall that holds the house while the wall is out", true, &keys_of_shore,
     MANY(shore, shores, shore_count)},
    {"work", "labor that the catalogs do not count", true, &keys_of_work, MANY(work, works, work_count)},
    {"buy", "something bought that the catalogs do not count; allowances and fees, too", true, &keys_of_buy,
     MANY(buy, buys, buy_count)},
    {"sub", "work by a subcontractor", true, &keys_of_sub, MANY(sub, subs, sub_count)},
    {"bid", "how cost becomes a price", false, &keys_of_bid, ONE(bid, bid)},
    {"alternate", "a choice of the client's, priced as the difference it makes to the whole job", true,
     &keys_of_alternate, MANY(alternate, alternates, alternate_count)},
};

const struct kind_row *kind_row(enum kind kind)
{
    return &kinds[kind];
}

const char *kind_name(enum kind kind)
{
    return kinds[kind].name;
}

bool kind_has_id(enum kind kind)
{
    return kinds[kind].has_id;
}

const char *kind_help(enum kind kind)
{
    return kinds[kind].help;
}

bool kind_find(const char *name, enum kind *out)
{
    for (int i = 0; i < KIND_COUNT; i++) {
        if (!name_same(name, kinds[i].name))
            continue;
        *out = (enum kind)i;
        return true;
    }
    return false;
}

const char *kind_near(struct arena *arena, const char *word)
{
    const char *names[KIND_COUNT];
    for (int i = 0; i < KIND_COUNT; i++)
        names[i] = kinds[i].name;
    return did_you_mean(arena, word, names, KIND_COUNT);
}

const struct key_row *key_find(enum kind kind, const char *key)
{
    const struct key_rows *keys = kinds[kind].keys;
    for (size_t i = 0; i < keys->count; i++) {
        const struct key_row *row = &keys->row[i];
        if (row->type == TYPE_SET ? strncmp(key, "set ", 4) == 0 : name_same(key, row->key))
            return row;
    }
    return NULL;
}

const char *key_near(struct arena *arena, enum kind kind, const char *word)
{
    const struct key_rows *keys = kinds[kind].keys;
    const char **names = arena_array(arena, keys->count, sizeof *names);
    for (size_t i = 0; i < keys->count; i++)
        names[i] = keys->row[i].key;
    return did_you_mean(arena, word, names, keys->count);
}

char *section_name(struct arena *arena, enum kind kind, const char *id)
{
    if (!kinds[kind].has_id)
        return arena_printf(arena, "[%s]", kinds[kind].name);
    return arena_printf(arena, "[%s %s]", kinds[kind].name, id);
}

char *head_name(struct arena *arena, enum kind kind, const struct head *head)
{
    if (!kinds[kind].has_id)
        return arena_strdup(arena, kinds[kind].name);
    return arena_printf(arena, "%s %s", kinds[kind].name, head->id);
}

const struct place *place_of(const struct entry *at, const struct head *head)
{
    return at ? &at->at : &head->at;
}

const char *choice_name(const char *kind, const char *key, int choice)
{
    enum kind which = KIND_JOB;
    if (!kind_find(kind, &which))
        return "";
    const struct key_row *row = key_find(which, key);
    if (!row || !row->of || choice < 1 || (size_t)choice > row->of->count)
        return "";
    return row->of->word[choice - 1];
}

const char *class_name(enum cost_class class)
{
    return class > CLASS_UNANSWERED && class < CLASS_COUNT ? words_class.word[class - 1] : "";
}

const char *type_word(enum key_type type)
{
    static const char *const word[] = {"text",
                                       "text",
                                       "length",
                                       "list of lengths",
                                       "lengths with places",
                                       "quantity",
                                       "sum of money",
                                       "percent",
                                       "number",
                                       "whole number",
                                       "date",
                                       "choice",
                                       "list of choices",
                                       "pitch",
                                       "span over a number",
                                       "reference",
                                       "list of references, or nothing",
                                       "reference, or words",
                                       "beam end",
                                       "support with its place",
                                       "list of places with areas, or none",
                                       "the value that the key takes"};
    return word[type];
}

size_t key_count(void)
{
    size_t count = 0;
    for (int i = 0; i < KIND_COUNT; i++)
        count += kinds[i].keys->count;
    return count;
}

static const char *or_empty(const char *text)
{
    return text ? text : "";
}

struct key_info key_info(size_t index)
{
    int kind = 0;
    while (index >= kinds[kind].keys->count)
        index -= kinds[kind++].keys->count;
    const struct key_row *row = &kinds[kind].keys->row[index];
    return (struct key_info){.kind = (enum kind)kind,
                             .kind_name = kinds[kind].name,
                             .key = row->key,
                             .type = type_word(row->type),
                             .unit = or_empty(row->unit),
                             .fallback = or_empty(row->fallback),
                             .range = or_empty(row->range),
                             .usual = or_empty(row->usual),
                             .help = row->help,
                             .example = row->example,
                             .required = row->required,
                             .repeats = row->type == TYPE_TEXTS || row->type == TYPE_INNER || row->type == TYPE_SET,
                             .choices = row->of ? row->of->word : NULL,
                             .choice_count = row->of ? row->of->count : 0,
                             .refers = or_empty(row->refers)};
}
