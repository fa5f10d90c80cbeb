/* Shared by the files that count what assemblies are counted by. */
#ifndef SAWBILL_TAKEOFF_PER_WORDS_H
#define SAWBILL_TAKEOFF_PER_WORDS_H

#include "counting.h"
#include "sawbill/wide.h"

/* value / unit, to hundredths, half away from zero. */
decimal_t hundredths(wide_t value, wide_t unit);
decimal_t feet(length_t length);
decimal_t square_feet(wide_t area);

length_t wall_out_length(const struct counting *counting, const struct wall *wall);

/* per_finish.c */
per_fn count_ceiling, count_insulation, count_painted, count_floor_patch, count_wall_ends, count_posts_boxed;
/* per_fit_up.c */
per_fn count_furring_feet, count_filler_area, count_plate_gaps, count_cap_plates, count_blocks_beside,
    count_joists_added;
/* per_site.c */
per_fn count_shoring_days, count_shores, count_shore_feet, count_shore_studs, count_jack_days, count_cribs;
per_fn count_floor_protected, count_trips;
/* per_joists.c */
per_fn count_joist_ends, count_high_joists, count_low_joists, count_joist_bays;
int64_t joist_hangers(const struct joist_design *design);
/* debris.c */
per_fn count_debris_feet, count_dump_runs, count_dumpsters;
/* per_obstructions.c */
per_fn count_in_the_way, count_propped, count_landed, count_headered_off;

#endif
