/* Footings of the job: soil pressure, projection, thickness; what is found in the ground is marked so. */
#include "size.h"

#include <math.h>

#include "sawbill/footing.h"
#include "sawbill/text.h"

/* IRC 2021 Table R401.4.1, presumptive bearing values, psf; 4,000 and more is rock. */
static const struct {
    double psf;
    const char *soil;
} presumptive[] = {
    {1500, "clay, silt"},           {2000, "sand, silty or clayey sand, silty or clayey gravel"},
    {3000, "sandy gravel, gravel"}, {4000, "sedimentary or foliated rock"},
    {12000, "crystalline bedrock"},
};
static const double strongest_soil_psf = 3000;

static void gather(struct sizing *s, struct footing_design *fd, size_t index, struct footing_case *at)
{
    at->post_short_in = INFINITY;
    for (size_t i = 0; i < s->job->post_count; i++) {
        const struct post_design *pd = &s->design->posts[i];
        if (!pd->member || !post_stands_on(s->job, pd->post, KIND_FOOTING, index))
            continue;
        double a = length_inches(pd->plies * pd->member->ply_width), b = length_inches(pd->member->depth);
        fd->lb = loads_plus(fd->lb, pd->lb);
        fd->posts += carries_something(s->job, KIND_POST, i);
        at->post_short_in = fmin(at->post_short_in, fmin(a, b));
        at->post_long_in = fmax(at->post_long_in, fmax(a, b));
    }
    for (size_t i = 0; i < s->combo_count; i++)
        if (combo_applies(&s->combo[i], &fd->lb))
            at->load_lb = fmax(at->load_lb, combined(&s->combo[i], &fd->lb));
}

static const char *feet_of(struct sizing *s, double side_in, double thick_in)
{
    return arena_printf(s->arena, "%s in x %s in, %s in thick", number_text(s->arena, side_in, 1),
                        number_text(s->arena, side_in, 1), number_text(s->arena, thick_in, 1));
}

static const char *least_text(struct sizing *s, const struct footing_design *fd)
{
    if (fd->least_side_in <= 0)
        return "no pad of plain concrete holds it on this soil: engineer";
    return arena_printf(s->arena, "the least is %s", feet_of(s, fd->least_side_in, fd->least_thick_in));
}

static struct check soil_check(struct sizing *s, struct footing_design *fd, const struct footing_pad *pad,
                               const struct footing_case *at)
{
    struct check worst = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, &fd->lb))
            continue;
        double pressure = footing_pressure_psf(combined(combo, &fd->lb), pad, at->concrete_pcf);
        struct check check =
            check_of("soil pressure", "IRC 2021 R403.1.1, Table R401.4.1", pressure, at->soil_psf, "psf");
        check.combination = combo->name;
        check.note = arena_printf(s->arena, "its own weight in it, no duration factor; %s", least_text(s, fd));
        check_worse(&worst, check);
    }
    fd->pressure_psf = worst.demand;
    return worst;
}

static void check_shape(struct sizing *s, const struct footing_pad *pad, const struct footing_case *at,
                        struct member_checks *checks)
{
    static const char *const clause = "IRC 2021 R403.1.1";
    struct check check =
        check_of("projection", clause, footing_projection_in(pad, at->post_short_in), pad->thickness_in, "in");
    check.note = arena_printf(s->arena, "beyond a post of %s in, at most the thickness: else steel, by an engineer",
                              number_text(s->arena, at->post_short_in, 2));
    checks_add(s, checks, check);
    double least = footing_projection_in(pad, at->post_long_in);
    check = check_of("least projection", clause, footing_least_projection_in(), fmax(least, 0), "in");
    check.note = arena_printf(s->arena, "beyond a post of %s in", number_text(s->arena, at->post_long_in, 2));
    checks_add(s, checks, check);
    checks_add(s, checks, check_of("least thickness", clause, footing_least_thickness_in(), pad->thickness_in, "in"));
}

/* The soil that the value stands for, or what it is beyond. */
static void say_soil(struct sizing *s, const struct footing *footing, const char *name)
{
    double psf = quantity_value(footing->soil.quantity);
    const char *value = number_text(s->arena, psf, 0), *given = footing->soil.at ? "as the job says" : "not said";
    const struct place *at = place_of(footing->soil.at, &footing->head);
    size_t class = 0, count = sizeof presumptive / sizeof *presumptive;
    while (class < count - 1 && psf > presumptive[class].psf)
        class ++;
    if (psf < presumptive[0].psf)
        engineer(s, at,
                 arena_printf(s->arena,
                              "%s: soil of %s psf is weaker than any presumptive value (IRC 2021 Table "
                              "R401.4.1): have it looked into",
                              name, value));
    else if (psf > strongest_soil_psf)
        engineer(s, at,
                 arena_printf(s->arena,
                              "%s: %s psf is more than any soil's presumptive value, %s (IRC 2021 Table "
                              "R401.4.1): a soil report must say so",
                              name, value, presumptive[class].soil));
    basis_add(s, arena_printf(s->arena, "%s: soil %s psf, %s; presumptive for %s (IRC 2021 Table R401.4.1)", name,
                              value, given, presumptive[class].soil));
}

static void solve_least(struct footing_design *fd, const struct footing_case *at)
{
    struct footing_pad least;
    if (!footing_least(at, &least))
        return;
    fd->least_side_in = least.side_in;
    fd->least_thick_in = least.thickness_in;
}

/* Its weight is known only with its thickness; what is there without one is taken as thick as it must be. */
static struct footing_pad pad_of(const struct footing *footing, const struct footing_case *at)
{
    struct footing_pad pad = {length_inches(footing->size.length), length_inches(footing->thickness.length)};
    if (!footing->thickness.at)
        pad.thickness_in = fmax(footing_least_thickness_in(), footing_projection_in(&pad, at->post_short_in));
    return pad;
}

static void write_ground(struct sizing *s, const struct footing_design *fd, const struct footing_pad *pad,
                         const char *name)
{
    struct loads own = {{footing_concrete_pcf() * pad->side_in * pad->side_in * pad->thickness_in / 1728}};
    struct loads lb = loads_plus(fd->lb, own);
    path_add(s, arena_printf(s->arena, "own weight of %s", name), name, NAN, own);
    path_add(s, name,
             arena_printf(s->arena, "ground under %s, %s of %s psf", name, number_text(s->arena, fd->pressure_psf, 0),
                          number_text(s->arena, quantity_value(fd->footing->soil.quantity), 0)),
             NAN, lb);
}

static void check_known(struct sizing *s, struct footing_design *fd, const struct footing_case *at, const char *name)
{
    const struct footing *footing = fd->footing;
    bool existing = footing->status.choice == NE_EXISTING;
    struct footing_pad pad = pad_of(footing, at);
    struct member_checks *checks =
        checks_new(s, name,
                   arena_printf(s->arena, "%s, %s", feet_of(s, pad.side_in, pad.thickness_in),
                                existing ? "existing: verify" : "new"));
    checks_add(s, checks, soil_check(s, fd, &pad, at));
    if (footing->thickness.at)
        check_shape(s, &pad, at, checks);
    fd->passes = checks_close(s, checks, &footing->head.at);
    write_ground(s, fd, &pad, name);
    if (existing)
        basis_add(s, arena_printf(s->arena, "%s is there: its size%s and its soil rest on what the job says; verify",
                                  name, footing->thickness.at ? ", its thickness" : ""));
    if (!footing->thickness.at)
        unchecked_add(s, arena_printf(s->arena, "not checked: %s: its thickness is not given: verify", name));
}

static void footing_size(struct sizing *s, struct footing_design *fd, size_t index)
{
    const struct footing *footing = fd->footing;
    const char *name = head_name(s->arena, KIND_FOOTING, &footing->head);
    struct footing_case at = {.soil_psf = quantity_value(footing->soil.quantity),
                              .concrete_pcf = footing_concrete_pcf()};
    gather(s, fd, index, &at);
    fd->passes = true;
    if (at.load_lb <= 0) {
        unchecked_add(s, arena_printf(s->arena, "not checked: %s: no post of the job stands on it", name));
        return;
    }
    refuse_footing(s, fd);
    solve_least(fd, &at);
    say_soil(s, footing, name);
    if (footing->size.at)
        check_known(s, fd, &at, name);
    else
        path_add(s, name, arena_printf(s->arena, "ground under %s, its size not given", name), NAN, fd->lb);
    if (!footing->size.at)
        unchecked_add(s, arena_printf(s->arena, "not checked: %s: its size is not given: verify; %s lb on it: %s", name,
                                      number_text(s->arena, ceil(at.load_lb), 0), least_text(s, fd)));
    basis_add(s, "footings: each post in the middle of its pad; plain concrete at 150 pcf");
    unchecked_add(s, "not checked: frost and depth of footings, fill, and the concrete itself");
}

void footings_size(struct sizing *s)
{
    for (size_t i = 0; i < s->job->footing_count; i++) {
        s->design->footings[i].footing = &s->job->footings[i];
        footing_size(s, &s->design->footings[i], i);
    }
}
