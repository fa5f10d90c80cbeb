/* What this program does not size and leaves to an engineer: asked once, answered by his record alone.  Which things
 * these are is common practice, no source. */
#include "rules.h"

/* In the order of enum unusual. */
static const char *const why[UNUSUAL_COUNT] = {
    [UNUSUAL_MASONRY_ABOVE] = "masonry cracks before wood below it has sagged to its limit",
    [UNUSUAL_CANTILEVERED_ROOF] = "a roof that hangs out lifts what stands behind its support",
    [UNUSUAL_OPENINGS_NOT_STACKED] = "openings that do not stand over one another bring loads in points",
    [UNUSUAL_SEISMIC_D] = "the walls, posts and straps of such a house carry earthquake, too",
    [UNUSUAL_MASONRY_BELOW] = "nothing here checks unreinforced masonry under a beam or post",
    [UNUSUAL_POLE_OR_LOG] = "round or notched members are not rated here",
    [UNUSUAL_TWO_DWELLINGS] =
        "who opens a rated floor or wall must say how it is closed again, beam and posts included",
};

static bool has(const struct choices_value *value, enum unusual what)
{
    return (value->set & (1U << (unsigned)what)) != 0;
}

/* Written, but no word of it read: its own fault is enough. */
static bool unread(const struct choices_value *value)
{
    return value->at && value->set == 0;
}

static bool is_depended_on(const struct job *job)
{
    for (size_t i = 0; i < job->wall_count; i++)
        if (job->walls[i].status.choice == WALL_COMES_OUT)
            return true;
    return job->beam_count > 0;
}

/* Q011: absent is the question; a word of it is a refusal. */
void ask_about_unusual(const struct job *job, struct diags *diags)
{
    const struct choices_value *value = &job->facts.unusual;
    const struct place *at = place_of(value->at, &job->facts.head);
    if (!is_depended_on(job) || unread(value))
        return;
    if (!value->at || has(value, UNUSUAL_UNKNOWN)) {
        diag_add(diags, DIAG_Q011, at,
                 "is there masonry above, a roof that hangs out, two stories of wall whose openings do not stand over "
                 "one another, seismic design category D or more, unreinforced masonry to bear on, pole or log "
                 "framing, or a second dwelling beyond this floor or wall? write 'unusual = none', or what there is, "
                 "as 'sawbill keys job' lists it");
        return;
    }
    for (int what = UNUSUAL_MASONRY_ABOVE; what < UNUSUAL_COUNT && !job->facts.unusual_engineer.at; what++)
        if (has(value, (enum unusual)what))
            diag_add(diags, DIAG_Q011, at, "'%s' is left to an engineer: %s; write 'unusual engineer = NAME, SHEET'",
                     choice_name("job", "unusual", what), why[what]);
}

static void one_answer_alone(const struct ruling *ruling)
{
    const struct choices_value *value = &ruling->job->facts.unusual;
    for (int alone = UNUSUAL_NONE; alone <= UNUSUAL_UNKNOWN; alone++)
        if (has(value, (enum unusual)alone) && value->set != 1U << (unsigned)alone) {
            rule_broken(ruling, value->at, "'unusual' says '%s' and more; keep one of them",
                        choice_name("job", "unusual", alone));
            return;
        }
}

static void engineer_of_something(const struct ruling *ruling)
{
    const struct job_facts *facts = &ruling->job->facts;
    if (facts->unusual_engineer.at && facts->unusual.set == 1U << UNUSUAL_NONE)
        rule_broken(ruling, facts->unusual_engineer.at, "'unusual engineer' answers for nothing: 'unusual = none'");
}

static const struct rule rules[] = {
    {KIND_JOB, DIAG_K013, one_answer_alone},
    {KIND_JOB, DIAG_K013, engineer_of_something},
};
const struct rules rules_of_refusals = {rules, sizeof rules / sizeof *rules};
