/* sawbill cuts JOB: the cut plan, stick by stick.  sawbill cuts PIECES --stock STOCK: the same of bare lists. */
#include <string.h>
#include <time.h>

#include "cli.h"
#include "sawbill/cutlist.h"

/* Files beside what is shown; --certificate and --shop-stock. */
static enum exit_status write_files(struct arena *arena, const struct cuts_options *cuts, const struct catalog *catalog,
                                    struct cut_plan *const *plan, size_t count)
{
    enum exit_status status = EXIT_DONE;
    if (cuts->certificate) {
        const char *text = report_certificate(arena, plan, count);
        status = text ? write_text(arena, cuts->certificate, text) : EXIT_FAILED;
    }
    if (cuts->shop_stock)
        status =
            exit_worse(status, write_text(arena, cuts->shop_stock, report_shop_stock(arena, catalog, plan, count)));
    return status;
}

static enum exit_status cuts_of_job(struct arena *arena, const struct options *options)
{
    struct session session = session_open(arena, options, options->argument[0]);
    enum exit_status status = session_show(&session, options, report_cuts);
    if (status > EXIT_OPEN || !session.outcome)
        return status;
    const struct run *run = session.outcome->run;
    return exit_worse(status, write_files(arena, &options->cuts, session.catalog, run->plans, run->plan_count));
}

static bool read_length(const char *option, const char *text, length_t most, length_t *out)
{
    const char *why = NULL;
    length_t length = 0;
    if (!text)
        return true;
    if (length_parse(text, &length, &why) && length >= 0 && length <= most) {
        *out = length;
        return true;
    }
    say("%s takes a length like '1/8in', not '%s'%s%s", option, text, why ? ": " : "", why ? why : "");
    return false;
}

struct clock_limit {
    struct timespec end;
    bool set;
};

static bool is_past(void *owner)
{
    const struct clock_limit *limit = owner;
    struct timespec now;
    if (clock_gettime(CLOCK_MONOTONIC, &now) != 0)
        return true;
    return now.tv_sec > limit->end.tv_sec || (now.tv_sec == limit->end.tv_sec && now.tv_nsec >= limit->end.tv_nsec);
}

/* The user's limit of time: the one case in which a plan depends on the machine. */
static bool read_seconds(const char *text, struct clock_limit *limit)
{
    decimal_t seconds = 0;
    const char *why = "";
    if (!text)
        return true;
    if (!decimal_parse(text, &seconds, &why) || seconds <= 0 || seconds > 86400 * DECIMAL_ONE ||
        clock_gettime(CLOCK_MONOTONIC, &limit->end) != 0) {
        say("--seconds takes a number of seconds, up to a day, not '%s'", text);
        return false;
    }
    const long nanoseconds = 1000000000;
    limit->set = true;
    limit->end.tv_sec += (time_t)(seconds / DECIMAL_ONE);
    limit->end.tv_nsec += (long)(seconds % DECIMAL_ONE) * (nanoseconds / DECIMAL_ONE);
    limit->end.tv_sec += limit->end.tv_nsec / nanoseconds;
    limit->end.tv_nsec %= nanoseconds;
    return true;
}

/* Kerf and trim as a job has them where nothing is said. */
static bool read_rules(const struct cuts_options *cuts, struct cut_rules *rules, struct clock_limit *limit)
{
    *rules = (struct cut_rules){.kerf = LENGTH_INCH / 8,
                                .trim = LENGTH_INCH / 2,
                                .both_ends = cuts->both_ends,
                                .square_both_ends = cuts->square_both_ends,
                                .least_cutoff = 16 * LENGTH_INCH};
    return read_length("--kerf", cuts->kerf, LENGTH_INCH, &rules->kerf) &&
           read_length("--trim", cuts->trim, LENGTH_MOST, &rules->trim) &&
           read_length("--least-cutoff", cuts->least_cutoff, LENGTH_MOST, &rules->least_cutoff) &&
           read_seconds(cuts->seconds, limit);
}

static bool open_source(struct arena *arena, const char *file, struct list_source *source)
{
    *source = (struct list_source){.file = file};
    if (strcmp(file, "-") != 0)
        return true;
    source->file = "(standard input)";
    source->text = read_file(arena, file, &source->length);
    return source->text != NULL;
}

static enum exit_status status_of(const struct diags *diags)
{
    for (size_t i = 0; i < diags->count; i++)
        if (diags->item[i].code == DIAG_F001)
            return EXIT_FILE;
    return diag_has_stop(diags) ? EXIT_STOPPED : EXIT_DONE;
}

/* Plans of all members, or NULL: a plan that its verifier rejects. */
static struct cut_plan **plan_list(struct arena *arena, const struct cut_list *list, const struct cut_rules *rules,
                                   struct clock_limit *clock, size_t *count, struct diags *diags)
{
    struct cut_problem *problem = cut_problems_from_list(arena, list, rules, count, diags);
    struct cut_plan **plan = arena_array(arena, *count, sizeof(struct cut_plan *));
    if (diag_has_stop(diags))
        *count = 0;
    struct cut_limits limits = {.stop = clock->set ? is_past : NULL, .owner = clock};
    for (size_t i = 0; i < *count; i++) {
        plan[i] = cut_solve_within(arena, &problem[i], &limits, NULL, diags);
        const char *wrong = cut_verify(arena, &problem[i], plan[i]);
        if (wrong) {
            say("internal failure: cut plan of '%s': %s", problem[i].member, wrong);
            return NULL;
        }
        cut_compare(arena, plan[i]);
    }
    return plan;
}

static enum exit_status show_list(struct arena *arena, const struct options *options, const struct cuts_report *report,
                                  enum exit_status status)
{
    const char *text = NULL;
    if (options->json) {
        text = report_list_json(arena, report);
        if (!text)
            return EXIT_FAILED;
    } else if (status == EXIT_DONE && !options->quiet) {
        text = report_list(arena, report, options->color && !options->output, options->width);
    }
    if (text)
        status = exit_worse(status, put_text(arena, options, text));
    if (status == EXIT_DONE)
        status = write_files(arena, &options->cuts, NULL, report->plan, report->plan_count);
    return status;
}

static enum exit_status cuts_of_list(struct arena *arena, const struct options *options)
{
    struct cut_rules rules;
    struct clock_limit clock = {.set = false};
    struct diags diags = {.arena = arena};
    struct list_source pieces, stock;
    size_t count = 0;
    if (!read_rules(&options->cuts, &rules, &clock))
        return EXIT_USE;
    if (!open_source(arena, options->argument[0], &pieces) || !open_source(arena, options->cuts.stock, &stock))
        return EXIT_FILE;
    struct cut_plan **plan = NULL;
    const struct cut_list *list = cut_list_read(arena, &pieces, &stock, &diags);
    if (!diag_has_stop(&diags)) {
        plan = plan_list(arena, list, &rules, &clock, &count, &diags);
        if (!plan)
            return EXIT_FAILED;
    }
    diag_sort(&diags);
    show_diags(arena, &diags, options->quiet);
    const struct cuts_report report = {&rules, plan, count, &diags};
    return show_list(arena, options, &report, status_of(&diags));
}

enum exit_status command_cuts(struct arena *arena, const struct options *options)
{
    const struct cuts_options *cuts = &options->cuts;
    if (cuts->stock)
        return cuts_of_list(arena, options);
    if (cuts->kerf || cuts->trim || cuts->least_cutoff || cuts->seconds || cuts->both_ends || cuts->square_both_ends) {
        say("--kerf, --trim and their kin go with --stock; a job says them in [job]");
        return EXIT_USE;
    }
    return cuts_of_job(arena, options);
}
