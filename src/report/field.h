/* What the crew works from: one sheet a new beam, as parts of lines and tables, and one for the whole job.  Built once,
 * shown by the terminal, the workbook and JSON alike.  No money is in it. */
#ifndef SAWBILL_REPORT_FIELD_H
#define SAWBILL_REPORT_FIELD_H

#include "sawbill/report.h"

/* What the cells of a column hold.  JSON: text is text; a length KEY_in and KEY_text; a number a number; lengths lists
 * KEY_in and KEY_text. */
enum field_value { FIELD_TEXT, FIELD_LENGTH, FIELD_NUMBER, FIELD_LENGTHS };
/* Shares of a table's columns make FIELD_SHARES: what each has of the page's width. */
enum { FIELD_SHARES = 24, FIELD_COLUMNS_MOST = 10 };
struct field_column {
    const char *head, *key;
    enum field_value value;
    int share;  /* 0: in JSON alone */
    bool wraps; /* gives way on a narrow terminal */
};
struct field_cell {
    const char *text;       /* as it is shown; NULL: nothing */
    double number;          /* FIELD_NUMBER, inches of FIELD_LENGTH; NAN: none */
    const length_t *length; /* FIELD_LENGTHS */
    size_t count;
};
struct field_table {
    const char *key, *title;
    const struct field_column *column;
    size_t columns;
    struct field_cell (*row)[FIELD_COLUMNS_MOST];
    size_t rows, capacity;
};
/* SAY: a line; TICK: a box to tick before it; STOP: what keeps the work from going on. */
enum field_is { FIELD_SAY, FIELD_TICK, FIELD_STOP, FIELD_TABLE };
struct field_item {
    enum field_is is;
    const char *text;
    struct field_table *table;
};
struct field_part {
    const char *key, *title;
    struct field_item *item;
    size_t count, capacity;
};
struct field_sheet {
    const char *id, *title; /* "beam parlor"; "job" for the whole */
    struct field_part *part;
    size_t count, capacity;
};
struct field {
    struct field_sheet *sheet;
    size_t count, capacity;
};

/* Of a report with a run; no sheet where no new beam is. */
struct field field_of(struct arena *arena, const struct report *report);

/* Building.  Texts are the arena's or static. */
struct field_part *field_part_add(struct arena *arena, struct field_sheet *sheet, const char *key, const char *title);
void field_add(struct arena *arena, struct field_part *part, enum field_is is, const char *format, ...)
    __attribute__((format(printf, 4, 5)));
/* A table without a row is not shown; the part keeps it all the same. */
struct field_table *field_table_add(struct arena *arena, struct field_part *part, const char *key, const char *title,
                                    const struct field_column *column, size_t columns);
struct field_cell *field_row(struct arena *arena, struct field_table *table);
struct field_cell field_text(const char *text);
struct field_cell field_length(struct arena *arena, length_t length);
struct field_cell field_number(struct arena *arena, double number, int decimals);
/* The tape of each, wrapped where it is shown: "3-1/2\", 11-1/2\"". */
struct field_cell field_lengths(struct arena *arena, const length_t *length, size_t count);

/* Its blanks made such that no line ends there.  field_shown: those within a tape reading, so that 7' 2" is never read
 * as 7' and 2"; what terminal and workbook show. */
const char *field_unbroken(struct arena *arena, const char *text);
const char *field_shown(struct arena *arena, const char *text);

/* One beam, and what its parts are made of. */
struct field_beam {
    struct arena *arena;
    const struct report *report;
    const struct job *job;
    const struct run *run;
    const struct design *design;
    const struct takeoff *takeoff;
    const struct beam_design *beam;
    const char *name; /* "beam parlor" */
    struct field_sheet *sheet;
};
/* In this order on the sheet. */
void field_stop(struct field_beam *of);
void field_plan(struct field_beam *of);
void field_shores(struct field_beam *of);
void field_joists(struct field_beam *of);
void field_plies(struct field_beam *of);
void field_posts(struct field_beam *of);
void field_marks(struct field_beam *of);
void field_hardware(struct field_beam *of);
void field_raise(struct field_beam *of);
void field_lower(struct field_beam *of);
void field_finish(struct field_beam *of);

/* What belongs to a beam. */
bool field_hangs_joists(const struct beam *beam); /* flush or upset: joists are cut and hung */
const char *field_side(int side);                 /* "A", "B" */
const char *field_member(struct arena *arena, const struct member *member, int plies); /* "3 - DFL2-2X10" */
/* The shore holds joists, loads, walls of this beam or the beam itself; or nothing that tells which beam. */
bool field_has_shore(const struct field_beam *of, const struct shore_design *shore);
/* Which face the shore stands at: 0 A, 1 B, -1 neither or both. */
int field_shore_side(const struct field_beam *of, const struct shore *shore);
const struct cut_side *field_cut_side(const struct field_beam *of, int side);
const struct post_design *field_post(const struct field_beam *of, const struct post *post);
/* Beams or trimmers of openings hang on it. */
bool field_carries_hung(const struct field_beam *of);
/* Posts under the beam or on it. */
bool field_has_post(const struct field_beam *of, size_t post);

#endif
