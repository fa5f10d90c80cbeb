/* What comes out, by loose volume and by weight, and how many runs or dumpsters carry it away. */
#include "per_words.h"
#include "sawbill/text.h"

/* A pickup with sides, and a ten-yard dumpster; common practice, no source: the job may say its own. */
enum { RUN_CUFT = 2 * 27, RUN_LB = 1500, DUMPSTER_CUFT = 10 * 27, DUMPSTER_LB = 4000 };

static decimal_t decimal_up(double value)
{
    return (decimal_t)(value * 100 + 0.5) * (DECIMAL_ONE / 100); /* to hundredths, as the sheet shows it */
}

static bool by_dumpster(const struct job *job)
{
    return job->facts.debris_by.choice == DEBRIS_DUMPSTERS;
}

decimal_t load_holds(const struct job *job)
{
    if (job->facts.load_holds.at)
        return decimal_up(quantity_value(job->facts.load_holds.quantity));
    return decimal_of(by_dumpster(job) ? DUMPSTER_CUFT : RUN_CUFT);
}

decimal_t load_carries(const struct job *job)
{
    if (job->facts.load_carries.at)
        return decimal_up(quantity_value(job->facts.load_carries.quantity));
    return decimal_of(by_dumpster(job) ? DUMPSTER_LB : RUN_LB);
}

static int64_t loads_for(decimal_t amount, decimal_t one)
{
    return one > 0 ? (amount + one - 1) / one : 0;
}

static void count_row(struct counting *counting, const struct debris_row *row)
{
    const char *finish = NULL;
    struct per_info info;
    struct takeoff *takeoff = counting->takeoff;
    per_fn *count = per_find(counting->arena, row->per, &info, &finish);
    if (!count)
        return; /* the catalog has said so */
    decimal_t counted = count(counting, finish);
    if (counted <= 0)
        return;
    decimal_t loose = decimal_times(decimal_times(counted, row->solid, 4), row->fluff, 2);
    takeoff->debris = arena_more(counting->arena, takeoff->debris, takeoff->debris_count, &takeoff->debris_capacity,
                                 sizeof *takeoff->debris);
    takeoff->debris[takeoff->debris_count++] =
        (struct takeoff_debris){row, counted, loose, decimal_times(counted, row->pounds, 2)};
    takeoff->debris_cuft += loose;
    takeoff->debris_lb += decimal_times(counted, row->pounds, 2);
}

/* The greater of what the volume and what the weight ask; a job that says nothing of its debris takes one. */
void count_debris(struct counting *counting)
{
    struct takeoff *takeoff = counting->takeoff;
    for (size_t i = 0; i < counting->catalog->debris_count; i++)
        count_row(counting, &counting->catalog->debris[i]);
    int64_t by_volume = loads_for(takeoff->debris_cuft, load_holds(counting->job));
    int64_t by_weight = loads_for(takeoff->debris_lb, load_carries(counting->job));
    takeoff->debris_loads = by_volume > by_weight ? by_volume : by_weight;
    if (counting->catalog->debris_count == 0)
        takeoff->debris_loads = 1;
}

decimal_t count_dump_runs(const struct counting *counting, const char *finish)
{
    (void)finish;
    return by_dumpster(counting->job) ? 0 : decimal_of(counting->takeoff->debris_loads);
}

decimal_t count_dumpsters(const struct counting *counting, const char *finish)
{
    (void)finish;
    return by_dumpster(counting->job) ? decimal_of(counting->takeoff->debris_loads) : 0;
}

decimal_t count_debris_feet(const struct counting *counting, const char *finish)
{
    (void)finish;
    return counting->takeoff->debris_cuft;
}
