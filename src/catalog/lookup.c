#include "sawbill/catalog.h"

#include <string.h>

#include "sawbill/text.h"

const struct member *catalog_member(const struct catalog *catalog, const char *code)
{
    for (size_t i = 0; i < catalog->member_count; i++)
        if (name_same(catalog->members[i].code, code))
            return &catalog->members[i];
    return NULL;
}

const struct hanger *catalog_hanger(const struct catalog *catalog, const char *code)
{
    for (size_t i = 0; i < catalog->hanger_count; i++)
        if (name_same(catalog->hangers[i].code, code))
            return &catalog->hangers[i];
    return NULL;
}

const struct fastener *catalog_fastener(const struct catalog *catalog, const char *code)
{
    for (size_t i = 0; i < catalog->fastener_count; i++)
        if (name_same(catalog->fasteners[i].code, code))
            return &catalog->fasteners[i];
    return NULL;
}

const struct fastener *catalog_fastener_of(const struct catalog *catalog, const char *item)
{
    const struct fastener *found = NULL;
    for (size_t i = 0; i < catalog->fastener_count; i++) {
        const struct fastener *fastener = &catalog->fasteners[i];
        if (!fastener->item || !name_same(fastener->item, item))
            continue;
        if (fastener->count_per_lb > 0)
            return fastener;
        found = found ? found : fastener;
    }
    return found;
}

const struct task *catalog_task(const struct catalog *catalog, const char *task)
{
    for (size_t i = 0; i < catalog->task_count; i++)
        if (name_same(catalog->tasks[i].task, task))
            return &catalog->tasks[i];
    return NULL;
}

const struct trade *catalog_trade(const struct catalog *catalog, const char *trade)
{
    for (size_t i = 0; i < catalog->trade_count; i++)
        if (name_same(catalog->trades[i].trade, trade))
            return &catalog->trades[i];
    return NULL;
}

const struct supplier *catalog_supplier(const struct catalog *catalog, const char *name)
{
    for (size_t i = 0; i < catalog->supplier_count; i++)
        if (name_same(catalog->suppliers[i].name, name))
            return &catalog->suppliers[i];
    return NULL;
}

#define NAME_MOST 128

/* "No.1/No.2" is a row for each of the two; "No.2" finds it, and so does the whole. */
static bool grade_is(const char *row_grade, const char *grade)
{
    if (name_same(row_grade, grade))
        return true;
    for (const char *part = row_grade; *part;) {
        size_t length = strcspn(part, "/");
        char one[NAME_MOST];
        if (length < sizeof one) {
            memcpy(one, part, length);
            one[length] = '\0';
            if (name_same(one, grade))
                return true;
        }
        part += length;
        part += *part == '/';
    }
    return false;
}

/* Of the rows with one species and grade: the narrowest class that holds the width.  NDS Supplement Table 4B has a row
 * for each width class ("2-4 in wide" stands as 4); a row for any width has 0. */
static const struct design_row *better_row(const struct design_row *best, const struct design_row *row, double width)
{
    static const double SLACK = 1e-6;
    bool any_width = row->width_in <= 0 || width <= 0;
    if (!any_width && row->width_in + SLACK < width)
        return best;
    if (!best)
        return row;
    if (row->width_in <= 0)
        return best; /* a row for this width is nearer */
    return best->width_in <= 0 || row->width_in < best->width_in ? row : best;
}

const struct design_row *catalog_design(const struct catalog *catalog, const char *species, const char *grade,
                                        double nominal_width_in)
{
    const struct design_row *best = NULL;
    for (size_t i = 0; i < catalog->design_count; i++) {
        const struct design_row *row = &catalog->design[i];
        if (name_same(row->species, species) && grade_is(row->grade, grade))
            best = better_row(best, row, nominal_width_in);
    }
    return best;
}

/* Does `name` read "species grade"? The species may hold blanks, so each blank is tried as the parting. */
static bool names_row(const struct design_row *row, const char *name)
{
    for (const char *blank = strchr(name, ' '); blank; blank = strchr(blank + 1, ' ')) {
        size_t length = (size_t)(blank - name);
        char species[NAME_MOST];
        if (length >= sizeof species)
            return false;
        memcpy(species, name, length);
        species[length] = '\0';
        if (name_same(row->species, species) && grade_is(row->grade, blank + 1))
            return true;
    }
    return false;
}

const struct design_row *catalog_design_named(const struct catalog *catalog, const char *name, double nominal_width_in)
{
    const struct design_row *best = NULL;
    for (size_t i = 0; i < catalog->design_count; i++)
        if (names_row(&catalog->design[i], name))
            best = better_row(best, &catalog->design[i], nominal_width_in);
    return best;
}

double catalog_nominal_width(const char *size)
{
    const char *mark = strpbrk(size, "xX");
    if (!mark)
        return 0;
    mark++;
    while (*mark == ' ')
        mark++;
    double width = 0;
    for (; *mark >= '0' && *mark <= '9' && width < 1000; mark++)
        width = 10 * width + (*mark - '0');
    return *mark == '\0' ? width : 0;
}

/* a / b < c / d for positive packs, exact: money and packs are integers far below 2^63 each. */
static bool cheaper(const struct price *a, const struct price *b)
{
    __extension__ typedef __int128 wide;
    return (wide)a->price * b->pack < (wide)b->price * a->pack;
}

bool catalog_on_sale(const struct catalog *catalog, const struct price *price)
{
    if (catalog->closed == 0 || !price->supplier)
        return true;
    const size_t bits = sizeof catalog->closed * 8;
    for (size_t i = 0; i < catalog->supplier_count && i < bits; i++)
        if ((catalog->closed >> i & 1) && name_same(catalog->suppliers[i].name, price->supplier))
            return false;
    return true;
}

const struct price *catalog_cheapest(const struct catalog *catalog, const char *item)
{
    const struct price *best = NULL;
    for (size_t i = 0; i < catalog->price_count; i++) {
        const struct price *price = &catalog->prices[i];
        if (price->length || price->increment || !name_same(price->item, item) || !catalog_on_sale(catalog, price))
            continue;
        if (!best || cheaper(price, best))
            best = price;
    }
    return best;
}

const char *catalog_what(const struct catalog *catalog, const char *item)
{
    for (size_t i = 0; i < catalog->price_count; i++)
        if (catalog->prices[i].what[0] && name_same(catalog->prices[i].item, item))
            return catalog->prices[i].what;
    return item;
}

/* What the takeoff counts.  A finish is open, for it is the job's own word: what a square foot is of, and a floor. */
static const struct catalog_per PERS[] = {
    {"job", "job", "once a job"},
    {"day of shoring", "days", "days that shores stand: those of a set one after the other, the others at once"},
    {"foot of wall out", "ft", "length of the walls that come out"},
    {"square foot of wall out", "sq ft", "one face of the walls that come out"},
    {"square foot of ceiling opened", "sq ft", "cut length of a beam x (its width + the ceiling opened on each side)"},
    {"beam", "each", "new beams"},
    {"foot of beam", "ft", "cut length of the new beams"},
    {"ply", "each", "plies of the new beams"},
    {"ply lifted", "each", "of them those that go up one by one"},
    {"beam raised whole", "each", "new beams that go up in one piece"},
    {"joist end", "each", "joist ends that are cut and hung on a beam"},
    {"joist end high", "each", "of them those that stand above the line and are shimmed in their hangers"},
    {"joist end low", "each", "of them those that hang below the line and are lifted to it"},
    {"joist bay", "each", "bays between the joists of a side that are held apart while they are cut and hung"},
    {"hanger", "each", "hangers, of joists and of beam ends"},
    {"strap", "each", "tie straps"},
    {"post", "each", "new posts"},
    {"foot of post", "ft", "height of the new posts"},
    {"beam end in a pocket", "each", "beam ends that go into a pocket"},
    {"beam end on a hanger", "each", "beam ends that hang"},
    {"shore", "each", "temporary walls"},
    {"foot of shore", "ft", "length of the temporary walls"},
    {"shore stud", "each", "studs of the temporary walls"},
    {"block", "each", "blocks below posts"},
    {"footing", "each", "new footings"},
    {"cubic foot of footing", "cu ft", "concrete of the new footings"},
    {"opening framed", "each", "new openings in a field of joists"},
    {"kicker", "each", "braces that hold the top of an upset beam"},
    {"beam end held", "each", "beam ends that blocks, straps or king studs keep from rolling over"},
    {"beam end held by wood", "each", "of them those that blocks or king studs hold"},
    {"member in the way", "each", "members that stand where a beam goes, roof braces among them"},
    {"member propped", "each", "of them those with a prop of their own"},
    {"member landed", "each", "of them those that land on the beam"},
    {"member headered off", "each", "of them those that are headered off"},
    {"service", "each", "wires, pipes and ducts in the walls that come out"},
    {"beam removed", "each", "old beams that come out"},
    {"post removed", "each", "old posts that come out"},
    {"header removed", "each", "old headers that come out"},
    {"foot removed", "ft", "length of the beams, posts and headers that come out"},
    {"foot cut in sections", "ft", "length of those that come out in sections"},
    {"removed whole", "each", "beams, posts and headers that come out whole"},
    {"jack day", "days", "jack posts of the shores x the days that each shore stands"},
    {"crib", "each", "cribs that hold the floor below a shore"},
    {"square foot of floor protected", "sq ft", "floor that is covered, as the job says"},
    {"trip", "each", "trips of the crew to the site, as the job says"},
    {"cubic foot of debris", "cu ft", "loose debris, by debris.csv"},
    {"dump run", "each", "loads of debris, by volume or by weight, where the job takes it away itself"},
    {"dumpster", "each", "the same, where dumpsters take it"},
    {"square foot of insulation put back", "sq ft", "ceiling opened that has insulation on it"},
    {"square foot painted", "sq ft", "ceiling and walls to the next corners: 'area to paint'"},
    {"wall end", "each",
     "ends of new beams on a post, on a plate or in a pocket: what is left of the wall is finished"},
    {"post boxed", "each", "posts under new beams between their ends, finished all round"},
    {"foot of furring", "ft", "strips on both faces of a wall that post or beam stand out of"},
    {"square foot of filler", "sq ft", "one face of dropped beams that are narrower than their wall"},
    {"plate gap", "each", "walls whose plates came out longer than the new beam is"},
    {"cap plate", "each", "plates on new posts"},
    {"block beside a beam", "each", "blocks from a beam to the joist beside it, or between joists on top of it"},
    {"joist added", "each", "joists put in new, alone or beside another"},
};
static const struct {
    const char *before, *behind;
} FINISHES[] = {{"square foot of ", ""}, {"foot of ", " floor"}};

size_t catalog_per_count(void)
{
    return sizeof PERS / sizeof *PERS;
}

struct catalog_per catalog_per(size_t index)
{
    return PERS[index];
}

static bool is_finish_word(const char *folded, const char *before, const char *behind)
{
    size_t length = strlen(folded), first = strlen(before), last = strlen(behind);
    return length > first + last && strncmp(folded, before, first) == 0 && strcmp(folded + length - last, behind) == 0;
}

/* Beside the listed words those with a finish in them. */
bool catalog_per_known(const char *per)
{
    for (size_t i = 0; i < sizeof PERS / sizeof *PERS; i++)
        if (name_same(PERS[i].per, per))
            return true;
    for (size_t i = 0; i < sizeof FINISHES / sizeof *FINISHES; i++)
        if (is_finish_word(per, FINISHES[i].before, FINISHES[i].behind))
            return true;
    return false;
}
