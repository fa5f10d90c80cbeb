/* Load combinations, allowable stress design, without wind and earthquake. */
#include "size.h"

/* ASCE 7-16 2.4.1, combinations 1 to 4; CD of the shortest load, NDS 2018 2.3.2.  Order of the factors: dead, live,
 * roof live, snow, live of an attic without storage.  That live load need not act with other live loads (IRC 2021 Table
 * R301.5 note b): the last three have it in the place of L; with roof live load it is kept, the safe side.  Jobs
 * without such an attic leave the three out. */
enum { WITHOUT_ATTIC = 6 };
static const struct combination plain_snow[] = {
    {"D", {1, 0, 0, 0}, 0.9},
    {"D+L", {1, 1, 0, 0}, 1.0},
    {"D+Lr", {1, 0, 1, 0}, 1.25},
    {"D+S", {1, 0, 0, 1}, 1.15},
    {"D+0.75L+0.75Lr", {1, 0.75, 0.75, 0}, 1.25},
    {"D+0.75L+0.75S", {1, 0.75, 0, 0.75}, 1.15},
    {"D+La", {1, 0, 0, 0, 1}, 1.0},
    {"D+0.75La+0.75Lr", {1, 0, 0.75, 0, 0.75}, 1.25},
    {"D+0.75La+0.75S", {1, 0, 0, 0.75, 0.75}, 1.15},
};
/* ASCE 7-22 2.4.1: its snow is a strength-level load. */
static const struct combination strength_snow[] = {
    {"D", {1, 0, 0, 0}, 0.9},
    {"D+L", {1, 1, 0, 0}, 1.0},
    {"D+Lr", {1, 0, 1, 0}, 1.25},
    {"D+0.7S", {1, 0, 0, 0.7}, 1.15},
    {"D+0.75L+0.75Lr", {1, 0.75, 0.75, 0}, 1.25},
    {"D+0.75L+0.75(0.7S)", {1, 0.75, 0, 0.525}, 1.15},
    {"D+La", {1, 0, 0, 0, 1}, 1.0},
    {"D+0.75La+0.75Lr", {1, 0, 0.75, 0, 0.75}, 1.25},
    {"D+0.75La+0.75(0.7S)", {1, 0, 0, 0.525, 0.75}, 1.15},
};

const struct combination *combinations(bool strength, bool attic, size_t *count)
{
    *count = attic ? sizeof plain_snow / sizeof *plain_snow : WITHOUT_ATTIC;
    return strength ? strength_snow : plain_snow;
}

int combination_number(const struct combination *combo)
{
    bool roof = combo->factor[LOAD_ROOF_LIVE] > 0 || combo->factor[LOAD_SNOW] > 0;
    bool live = combo->factor[LOAD_LIVE] > 0 || combo->factor[LOAD_ATTIC] > 0;
    return roof ? live ? 4 : 3 : live ? 2 : 1;
}

double combined(const struct combination *combo, const struct loads *loads)
{
    double sum = 0;
    for (int source = 0; source < LOAD_SOURCES; source++)
        sum += combo->factor[source] * loads->of[source];
    return sum;
}

bool combo_applies(const struct combination *combo, const struct loads *present)
{
    for (int source = LOAD_LIVE; source < LOAD_SOURCES; source++)
        if (combo->factor[source] > 0 && !(present->of[source] > 0))
            return false;
    return true;
}

struct loads loads_plus(struct loads a, struct loads b)
{
    for (int source = 0; source < LOAD_SOURCES; source++)
        a.of[source] += b.of[source];
    return a;
}

struct loads loads_times(struct loads a, double times)
{
    for (int source = 0; source < LOAD_SOURCES; source++)
        a.of[source] *= times;
    return a;
}

double loads_sum(struct loads a)
{
    double sum = 0;
    for (int source = 0; source < LOAD_SOURCES; source++)
        if (source != LOAD_UPLIFT) /* it lifts */
            sum += a.of[source];
    return sum;
}
