/* The load path of every sample and every job that is counted by hand: each pound that comes to a joint leaves it
 * again, source by source, until the ground; and what is put on at the top arrives there, with all that weighs on the
 * way. */
#include "report/samples.h"

#include <dirent.h>
#include <math.h>

#define HAND SOURCE_DIR "/tests/takeoff/hand/"

static bool is_part_of(const char *from, const char *joint)
{
    size_t length = strlen(joint);
    return strncmp(from, joint, length) == 0 && (!from[length] || from[length] == ',');
}

/* "beam B1, end 2" is of the joint "beam B1": of all that something comes to, the longest that begins so. */
static const char *joint_of(const struct design *design, const char *from)
{
    const char *best = NULL;
    for (size_t i = 0; i < design->path_count; i++) {
        const char *to = design->path[i].to;
        if (is_part_of(from, to) && (!best || strlen(to) > strlen(best)))
            best = to;
    }
    return best;
}

/* Live loads stand on any spans: what each support of such a beam takes at most is more than all of them together. */
static const struct beam_design *beam_of_spans(struct arena *arena, const struct design *design, const char *joint)
{
    for (size_t i = 0; i < design->beam_count; i++)
        if (design->beams[i].inner_count > 0 &&
            strcmp(head_name(arena, KIND_BEAM, &design->beams[i].beam->head), joint) == 0)
            return &design->beams[i];
    return NULL;
}

static double in_of(const struct design *design, const char *joint, int source)
{
    double sum = 0;
    for (size_t i = 0; i < design->path_count; i++)
        sum += strcmp(design->path[i].to, joint) == 0 ? design->path[i].lb.of[source] : 0;
    return sum;
}

/* What leaves it; NAN: nothing does, it is the ground. */
static double out_of(struct arena *arena, const struct design *design, const char *joint, int source)
{
    const struct beam_design *spans = beam_of_spans(arena, design, joint);
    double sum = spans ? spans->end_full_lb[0].of[source] + spans->end_full_lb[1].of[source] : 0;
    for (size_t i = 0; spans && i < spans->inner_count; i++)
        sum += spans->inner[i].full_lb.of[source];
    bool any = spans != NULL;
    for (size_t i = 0; !spans && i < design->path_count; i++) {
        const char *from = joint_of(design, design->path[i].from);
        if (!from || strcmp(from, joint) != 0)
            continue;
        any = true;
        sum += design->path[i].lb.of[source];
    }
    return any ? sum : NAN;
}

static void assert_job(struct arena *arena, const char *name, const char *text)
{
    const struct result *result = run_text(arena, name, text);
    assert_int_equal(diag_count(&result->diags, DIAG_STOP), 0);
    const struct design *design = result->outcome->run->design;
    bool spans = false;
    for (size_t i = 0; i < design->beam_count; i++)
        spans |= design->beams[i].inner_count > 0;
    for (int source = 0; source < LOAD_UPLIFT; source++) {
        double on = 0, ground = 0;
        for (size_t i = 0; i < design->path_count; i++) {
            const struct path_step *step = &design->path[i];
            double in = in_of(design, step->to, source), out = out_of(arena, design, step->to, source);
            on += joint_of(design, step->from) ? 0 : step->lb.of[source];
            ground += isnan(out) ? step->lb.of[source] : 0;
            if (!isnan(out) && fabs(in - out) > 0.01)
                fail_msg("%s: %.2f lb of source %d come to %s, %.2f leave it", name, in, source, step->to, out);
        }
        if (spans && source != LOAD_DEAD ? ground < on - 0.01 : fabs(ground - on) > 0.01)
            fail_msg("%s: %.2f lb of source %d are put on, %.2f reach the ground", name, on, source, ground);
        assert_true(source != LOAD_DEAD || on > 500);
    }
}

static void samples_reach_the_ground(void **state)
{
    for (int i = 0; i < SAMPLES; i++) {
        const char *name = arena_printf(*state, "%s.ini", samples[i]);
        assert_job(*state, name, read_sample(*state, name));
    }
}

static void jobs_counted_by_hand_reach_the_ground(void **state)
{
    DIR *folder = opendir(HAND);
    assert_non_null(folder);
    int jobs = 0;
    for (const struct dirent *one = readdir(folder); one; one = readdir(folder)) {
        const char *dot = strrchr(one->d_name, '.');
        if (!dot || strcmp(dot, ".ini") != 0)
            continue;
        assert_job(*state, one->d_name,
                   read_sample(*state, arena_printf(*state, "../tests/takeoff/hand/%s", one->d_name)));
        jobs++;
    }
    assert_int_equal(closedir(folder), 0);
    assert_true(jobs >= 6);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(samples_reach_the_ground, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(jobs_counted_by_hand_reach_the_ground, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
