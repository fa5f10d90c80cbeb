/* Shared by the files of this stage only: the key table's rows, the readers, the checker. */
#ifndef SAWBILL_JOB_INTERNAL_H
#define SAWBILL_JOB_INTERNAL_H

#include "sawbill/job.h"
#include "sawbill/text.h"

enum key_type {
    TYPE_TEXT,
    TYPE_TEXTS, /* the key may repeat */
    TYPE_LENGTH,
    TYPE_LENGTHS, /* one value, a list with commas */
    TYPE_PLACED,  /* lengths, each at a place or from one to another */
    TYPE_QUANTITY,
    TYPE_MONEY,
    TYPE_PERCENT,
    TYPE_DECIMAL,
    TYPE_COUNT,
    TYPE_DATE,
    TYPE_CHOICE,
    TYPE_CHOICES, /* a list of them */
    TYPE_PITCH,   /* 6/12 */
    TYPE_LIMIT,   /* L/360 */
    TYPE_REF,     /* kind id */
    TYPE_REFS,    /* a list of references, or nothing */
    TYPE_STANDS,  /* a reference, or words of what is known */
    TYPE_END,     /* what a beam end bears on */
    TYPE_INNER,   /* a support between the ends, with its place; the key may repeat */
    TYPE_BRACES,  /* none, or places with the roof area each carries */
    TYPE_SET      /* an alternate's `set KIND ID KEY` */
};

/* Bit of a dimension in key_row.dims. */
#define DIM_BIT(dimension) (1U << (unsigned)(dimension))

struct words {
    const char *const *word; /* word[0] is choice 1 of its enum; 0 is "not answered" */
    size_t count;
};

/* One row a key. */
struct key_row {
    const char *key;
    enum key_type type;
    bool required;
    bool bare;              /* the key itself says the unit: a number without one is read, too */
    unsigned dims;          /* TYPE_QUANTITY: the dimensions that it may have */
    const char *unit;       /* for people: "ft, in, m"; TYPE_COUNT, TYPE_DECIMAL: the unit's word or NULL */
    const char *fallback;   /* the default, as it would be written; NULL for none */
    const char *range;      /* what is possible at all: "1 ft to 60 ft"; beyond it is a stop */
    const char *usual;      /* the trade's usual range; beyond it is a note */
    const struct words *of; /* TYPE_CHOICE, TYPE_CHOICES */
    const char *refers;     /* references: the kinds that they may name, "beam, block" */
    const char *help, *example;
    size_t offset; /* of its value in the kind's struct; TYPE_STANDS: of the ref_value */
    size_t words;  /* TYPE_STANDS: offset of the text_value */
};
struct key_rows {
    const struct key_row *row;
    size_t count;
};
struct kind_row {
    const char *name, *help;
    bool has_id;
    const struct key_rows *keys;
    size_t size;           /* of the struct */
    size_t offset, number; /* in struct job: of the array's pointer and of its count; of the struct itself without id */
};

extern const struct key_rows keys_of_job, keys_of_area, keys_of_roof, keys_of_joists, keys_of_opening, keys_of_beam,
    keys_of_load, keys_of_obstruction, keys_of_post, keys_of_block, keys_of_footing, keys_of_wall, keys_of_remove,
    keys_of_shore, keys_of_work, keys_of_buy, keys_of_sub, keys_of_bid, keys_of_alternate;
/* Words that tables of two files share. */
extern const struct words words_yes_no, words_yes_no_unknown, words_new_existing, words_class, words_moisture,
    words_heat, words_snow_level;

/* Rows of every kind of wood that has a `service`. */
#define SERVICE_ROWS(element)                                                                                          \
    {.key = "moisture in service",                                                                                     \
     .type = TYPE_CHOICE,                                                                                              \
     .fallback = "dry",                                                                                                \
     .of = &words_moisture,                                                                                            \
     .help = "wet: above 19 % moisture for long, as over bare ground in a crawl space or outside",                     \
     .example = "dry",                                                                                                 \
     .offset = offsetof(struct element, service.moisture)},                                                            \
        {.key = "heat in service",                                                                                     \
         .type = TYPE_CHOICE,                                                                                          \
         .fallback = "up to 100 F",                                                                                    \
         .of = &words_heat,                                                                                            \
         .help = "how hot the wood stays for long, as beside a flue",                                                  \
         .example = "up to 100 F",                                                                                     \
         .offset = offsetof(struct element, service.heat)},                                                            \
    {                                                                                                                  \
        .key = "incised", .type = TYPE_CHOICE, .fallback = "no", .of = &words_yes_no,                                  \
        .help = "slits cut for treatment: look for rows of small cuts in the wood", .example = "no",                   \
        .offset = offsetof(struct element, service.incised)                                                            \
    }

const struct kind_row *kind_row(enum kind kind);
/* The row of a folded key, or NULL.  `set beam b1 member` finds the row of `set KIND ID KEY`. */
const struct key_row *key_find(enum kind kind, const char *key);
const char *type_word(enum key_type type);
/* The closest key of a kind, or NULL. */
const char *key_near(struct arena *arena, enum kind kind, const char *word);
const char *kind_near(struct arena *arena, const char *word);
/* "[beam B1]" as the user wrote it. */
char *section_name(struct arena *arena, enum kind kind, const char *id);

/* held.c */
void ask_who_holds(const struct job *job, struct diags *diags);

/* Readers. */
struct reading {
    struct arena *arena;
    const char *file;
    const char *text;
    size_t length;
    struct entries *out;
    struct diags *diags;
};
void read_ini(struct reading *reading);
void read_json(struct reading *reading);
void entry_add(struct arena *arena, struct entries *entries, struct entry entry);
/* Splits "beam B1" at its first word: kind and id as written; id "" when there is none. */
void section_split(struct arena *arena, const char *text, char **kind, char **id);

/* JSON, by a scan of our own: every value and key in document order, with its place and source text. */
enum json_is { JSON_OBJECT, JSON_ARRAY, JSON_STRING, JSON_NUMBER, JSON_WORD };
struct json_node {
    enum json_is is;
    int line, column;
    int key_line, key_column; /* of its key; 0 in arrays and at the root */
    size_t from, length;      /* its source text */
};
struct json_index {
    struct json_node *node;
    size_t count, capacity;
};
/* false after a fault was added. */
bool json_scan(struct reading *reading, struct json_index *index);

/* The checker. */
struct checker {
    struct arena *arena;
    const char *file;
    const struct entries *entries;
    struct job *job;
    struct diags *diags;
    struct meant *meant; /* keys and kinds that misspelt ones stood for: they are not missing */
    size_t meant_count, meant_capacity;
    bool misread; /* a section or key was not understood: its answers are not missing either */
};
struct meant {
    const struct head *head; /* its section; NULL for a kind */
    const char *key;
};
void *kind_element(const struct job *job, enum kind kind, size_t index);
size_t kind_elements(const struct job *job, enum kind kind);
/* Index of a folded id, or SIZE_MAX. */
size_t element_find(const struct job *job, enum kind kind, const char *folded);
/* Everything but the alternates' effect. */
struct job *check_list(struct arena *arena, const char *file, const struct entries *entries, struct diags *diags);
/* A fault of the file's form stands in diags: what is missing was perhaps only not read. */
bool form_is_broken(const struct diags *diags);
/* Reads one value into its struct: faults K007 to K015. */
void value_read(struct checker *checker, const struct key_row *row, void *element, const struct entry *entry);
/* Reads the row's default; at stays NULL. */
void value_default(struct checker *checker, const struct key_row *row, void *element);
/* Values with a grammar of their own. */
bool parse_pitch(const char *text, double *rise, double *run);
bool parse_limit(const char *text, int *n);
bool number_alone(const char *text); /* 14, 1,250.5, 78 1/2: a number without a unit */
bool number_leads(const char *text); /* 40 pfs: a number and a word */
/* "14 ft or 14 in": the number with the first two of a row's units. */
const char *with_units(struct arena *arena, const char *number, const char *units);
/* Reads a reference and finds it; false after a fault (K011), out->id is NULL then. */
bool ref_read(struct checker *checker, const struct key_row *row, const char *text, const struct entry *entry,
              struct ref_value *out);
/* What the row may name that is spelt nearly so, or NULL. */
const char *ref_near(struct checker *checker, const struct key_row *row, const char *text);
/* inner.c: a support between the ends, put behind those before it. */
void inner_read(struct checker *checker, const struct key_row *row, const struct entry *entry, struct beam_inners *out);
/* refs.c: a place from end 1 of a beam, the part `text` of the entry; false after a fault. */
bool place_read(struct checker *checker, const struct key_row *row, const struct entry *entry, const char *text,
                const char *example, length_t *out);
/* What stands before the last " at " of a value; *place: what follows it, or NULL. */
char *before_place(struct arena *arena, const char *value, const char **place);
void end_read(struct checker *checker, const struct key_row *row, const struct entry *entry, struct beam_end *out);
/* A reference that was written and found. */
bool ref_found(const struct ref_value *ref);
/* Rules across keys, questions, circles, acknowledgements, alternates: each adds its own messages. */
void rules_check(struct checker *checker);
void questions_ask(struct checker *checker);
void ask_about_unusual(const struct job *job, struct diags *diags); /* refusals.c */
void circles_find(struct checker *checker);
void acknowledgements_check(struct checker *checker);
void alternates_read(struct checker *checker);

#endif
