/* What assemblies are counted by, about the shores and the site. */
#include "per_words.h"
#include "shore_stock.h"

/* What its days add to those of the shores of its set that come before it in the job. */
static int64_t days_more(const struct counting *counting, size_t index)
{
    const struct shore *shore = &counting->job->shores[index];
    int64_t most = 0;
    for (size_t k = 0; k < index; k++) {
        const struct shore *other = &counting->job->shores[k];
        if (shores_share(shore, other) && shores_stand_at_once(counting->order, shore, other) &&
            other->days.count > most)
            most = other->days.count;
    }
    return shore->days.count > most ? shore->days.count - most : 0;
}

/* Shores of a set stand one after the other, but for those that stand at once; the others all at once. */
decimal_t count_shoring_days(const struct counting *counting, const char *finish)
{
    (void)finish;
    const struct job *job = counting->job;
    int64_t most = 0;
    for (size_t i = 0; i < job->shore_count; i++) {
        int64_t days = 0;
        for (size_t k = 0; k < job->shore_count; k++)
            days += shores_share(&job->shores[i], &job->shores[k]) ? days_more(counting, k) : 0;
        most = days > most ? days : most;
    }
    return decimal_of(most);
}

decimal_t count_shores(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of((int64_t)counting->design->shore_count);
}

static int times_built(const struct shore_design *shore)
{
    return shore_stands_twice(shore) ? 2 : 1;
}

decimal_t count_shore_feet(const struct counting *counting, const char *finish)
{
    (void)finish;
    length_t sum = 0;
    for (size_t i = 0; i < counting->design->shore_count; i++)
        sum += times_built(&counting->design->shores[i]) * counting->design->shores[i].length;
    return feet(sum);
}

decimal_t count_shore_studs(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->shore_count; i++)
        sum += (int64_t)times_built(&counting->design->shores[i]) * counting->design->shores[i].studs;
    return decimal_of(sum);
}

/* Rented by the day for as long as the shore stands. */
decimal_t count_jack_days(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->job->shore_count; i++)
        sum += (int64_t)counting->job->shores[i].jack_posts.count * counting->job->shores[i].days.count;
    return decimal_of(sum);
}

decimal_t count_cribs(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->shore_count; i++)
        sum += shore_cribs(&counting->design->shores[i]);
    return decimal_of(sum);
}

decimal_t count_floor_protected(const struct counting *counting, const char *finish)
{
    (void)finish;
    const double hundred = 100; /* to hundredths of a square foot */
    double sqft = quantity_value(counting->job->facts.floor_to_protect.quantity);
    return (decimal_t)(sqft * hundred + 0.5) * (DECIMAL_ONE / 100);
}

decimal_t count_trips(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of(counting->job->facts.trips.count);
}
