/* The fasteners between the plies of a beam that joists and beams hang on: every joint, from each face, as the job
 * has them driven. */
#include "size.h"

#include <math.h>

#include "sawbill/joint.h"
#include "sawbill/text.h"

struct fastening {
    const struct beam_design *bd;
    const struct fastener *fastener;
    enum joint_kind kind;
    struct joint_plies plies;
    struct joint_distances least;
    double nominal_in, depth_in, edge_in, end_in, between_in, spacing_in;
    int rows, faces;
};

static double or_default(const struct length_value *value, double otherwise)
{
    return value->length > 0 ? length_inches(value->length) : otherwise;
}

static struct fastening fastening_of(const struct sizing *s, const struct beam_design *bd)
{
    const struct beam *beam = bd->beam;
    struct fastening f = {.bd = bd, .fastener = catalog_fastener(s->catalog, beam->ply_fasteners.text)};
    if (!f.fastener)
        return f;
    f.kind = joint_kind_of(f.fastener);
    f.nominal_in = length_inches(f.fastener->diameter);
    f.plies = (struct joint_plies){.plies = bd->plies,
                                   .ply_in = length_inches(bd->member->ply_width),
                                   .gravity = bd->values->gravity,
                                   .e_psi = bd->values->e};
    f.rows = beam->rows.count;
    f.faces = beam->each_face.choice == YES ? 2 : 1;
    f.spacing_in = length_inches(beam->spacing.length);
    f.least = joint_distances(f.nominal_in, beam->stagger.length > 0);
    f.depth_in = length_inches(bd->member->depth);
    f.edge_in = or_default(&beam->edge, f.least.edge);
    f.end_in = or_default(&beam->end, f.least.end);
    f.between_in = f.rows > 1 ? (f.depth_in - 2 * f.edge_in) / (f.rows - 1) : INFINITY;
    return f;
}

/* Z of one fastener at a joint, driven from face A or B; the load is across the grain of all plies. */
static struct joint_lateral one_at(const struct fastening *f, int joint, bool from_face_b)
{
    double fe = joint_fe_wood(f->plies.gravity, f->nominal_in, 90);
    double fyb = f->fastener->fyb_psi > 0 ? f->fastener->fyb_psi : joint_fyb(f->kind, f->nominal_in);
    struct joint_plane plane = {.nominal_in = f->nominal_in,
                                .root_in = length_inches(f->fastener->root),
                                .fyb_psi = fyb,
                                .side_in = f->plies.ply_in,
                                .main_in = joint_reach(&f->plies, f->kind, f->nominal_in,
                                                       length_inches(f->fastener->length), joint, from_face_b),
                                .fe_side = fe,
                                .fe_main = fe,
                                .angle_deg = 90};
    return joint_lateral(&plane);
}

/* Fasteners above one another are a row along the load: Cg, and C-delta of their distances. */
static struct joint_factors factors_of(const struct fastening *f, double cd)
{
    struct joint_factors factors = joint_factors_plain(cd);
    factors.cm = joint_cm(serves_wet(&f->bd->beam->service));
    factors.ct = joint_ct((int)f->bd->beam->service.heat.choice - HEAT_TO_100, serves_wet(&f->bd->beam->service));
    if (f->rows > 1) {
        double ea = f->plies.e_psi * f->plies.ply_in * f->spacing_in;
        factors.cg = joint_cg(f->rows, f->between_in, f->nominal_in, false, ea, ea);
        if (f->least.full_between > 0)
            factors.cdelta = fmin(1, fmax(f->between_in, 0) / f->least.full_between);
    }
    factors.cdelta = f->least.full_between > 0 ? fmin(factors.cdelta, f->end_in / f->least.full_end) : 1;
    return factors;
}

struct strength {
    double one[2], a_foot, plf; /* Z' from face A and B; fasteners a foot in one face */
    double more_lb;             /* of those beside the pattern under a beam that hangs here */
    enum joint_mode mode;
};

static struct strength strength_of(const struct fastening *f, int joint, double cd)
{
    struct strength out = {.a_foot = f->spacing_in > 0 ? 12 * f->rows / f->spacing_in : 0};
    struct joint_factors factors = factors_of(f, cd);
    for (int face = 0; face < f->faces; face++) {
        struct joint_lateral z = one_at(f, joint, face == 1);
        out.one[face] = joint_adjust(z.lb, &factors);
        out.plf += out.a_foot * out.one[face];
        out.more_lb += f->bd->beam->more_at_hung.count * out.one[face];
        if (z.lb > 0)
            out.mode = z.mode;
    }
    return out;
}

static double from_of(const struct joists *joists)
{
    return joists->from.at ? length_inches(joists->from.length) : 0;
}

static double to_of(const struct beam_design *bd, const struct joists *joists)
{
    double end = length_inches(bd->cut_length);
    return joists->to.at ? fmin(length_inches(joists->to.length), end) : end;
}

static struct loads side_plf(const struct beam_design *bd, int side, double x)
{
    const struct joist_design *jd = needs_hangers(bd->beam) ? bd->side[side] : NULL;
    bool here = jd && x > from_of(jd->joists) && x < to_of(bd, jd->joists);
    return here ? jd->line_plf : (struct loads){0};
}

/* What crosses a joint of what hangs on both sides: dead loads always, the others on either side or none. */
static struct joint_crossing crossing_of(const struct beam_design *bd, int joint, const struct loads plf[2],
                                         const struct combination *combo)
{
    double fixed[2], moving[2];
    for (int side = 0; side < 2; side++) {
        fixed[side] = combo->factor[LOAD_DEAD] * plf[side].of[LOAD_DEAD];
        moving[side] = combined(combo, &plf[side]) - fixed[side];
    }
    return joint_crossing(bd->plies, joint, fixed[0], fixed[1], moving[0], moving[1]);
}

static struct joint_crossing crossing_at(const struct beam_design *bd, int joint, double x,
                                         const struct combination *combo)
{
    const struct loads plf[2] = {side_plf(bd, 0, x), side_plf(bd, 1, x)};
    return crossing_of(bd, joint, plf, combo);
}

static double overlap_in(double from, double to, double low, double high)
{
    return fmax(0, fmin(to, high) - fmax(from, low));
}

/* Mean of a stretch.  Where an opening is, its trimmers, which hang in one point, stand in for the joists. */
static struct loads side_mean(const struct sizing *s, const struct beam_design *bd, int side, double from, double to)
{
    const struct joist_design *jd = needs_hangers(bd->beam) ? bd->side[side] : NULL;
    if (!jd || to <= from)
        return (struct loads){0};
    double covered = overlap_in(from, to, from_of(jd->joists), to_of(bd, jd->joists));
    struct loads tails = {0};
    for (size_t i = 0; i < s->design->opening_count; i++) {
        const struct opening_design *od = &s->design->openings[i];
        if (od->side != jd)
            continue;
        covered -= overlap_in(from, to, length_inches(od->zone[0]), length_inches(od->zone[1]));
        double open =
            overlap_in(from, to, length_inches(od->opening->from.length), length_inches(od->opening->to.length));
        struct loads psf = area_psf(s, area_of(s->job, &jd->joists->area));
        if (od->headers[0].is)
            tails = loads_plus(tails, loads_times(psf, od->headers[0].tail_ft / 2 * open / (to - from)));
    }
    return loads_plus(tails, loads_times(jd->line_plf, fmax(0, covered) / (to - from)));
}

/* The worst stretch between the places where joists of a side begin or end. */
static struct joint_crossing worst_crossing(const struct beam_design *bd, int joint, const struct combination *combo,
                                            double *at_in)
{
    double end = length_inches(bd->cut_length), place[6] = {0, end, 0, end, 0, end};
    for (int side = 0; side < 2; side++)
        if (bd->side[side]) {
            place[2 * side + 2] = from_of(bd->side[side]->joists);
            place[2 * side + 3] = to_of(bd, bd->side[side]->joists);
        }
    struct joint_crossing worst = {0};
    for (int i = 0; i < 6; i++) {
        double next = INFINITY;
        for (int k = 0; k < 6; k++)
            if (place[k] > place[i])
                next = fmin(next, place[k]);
        if (isinf(next))
            continue;
        struct joint_crossing here = crossing_at(bd, joint, (place[i] + next) / 2, combo);
        if (here.plf > worst.plf + 1e-9) {
            worst = here;
            *at_in = (place[i] + next) / 2;
        }
    }
    return worst;
}

static const char *what_is_on(int on)
{
    static const char *const words[] = {"dead load alone", "live on side A only", "live on side B only",
                                        "live on both sides"};
    return words[on & 3];
}

static const char *strength_note(struct sizing *s, const struct fastening *f, const struct strength *strength,
                                 const char *before)
{
    if (f->kind == JOINT_NONE)
        return arena_printf(s->arena, "%s; a %s holds no framing", before, f->fastener->kind);
    struct buffer text = {.arena = s->arena};
    buffer_printf(&text, "%s; Z' of %s:", before, f->fastener->code);
    for (int face = 0; face < f->faces; face++) {
        buffer_printf(&text, "%s from face %c ", face ? "," : "", 'A' + face);
        if (strength->one[face] > 0)
            buffer_printf(&text, "%s lb x %s a foot", number_text(s->arena, strength->one[face], 1),
                          number_text(s->arena, strength->a_foot, 2));
        else
            buffer_add(&text, "does not reach");
    }
    if (strength->plf > 0)
        buffer_printf(&text, " (G %s, mode %s)", number_text(s->arena, f->plies.gravity, 2),
                      joint_mode_name(strength->mode));
    return buffer_text(&text);
}

static struct check joint_check(struct sizing *s, const struct fastening *f, const struct loads *present, int joint)
{
    struct check worst = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, present))
            continue;
        double at = NAN;
        struct joint_crossing q = worst_crossing(f->bd, joint, combo, &at);
        struct strength strength = strength_of(f, joint, combo->cd);
        struct check check = check_of("", "NDS 2018 12.3", q.plf, strength.plf, "plf");
        check.combination = combo->name;
        check.at_in = at;
        const char *load = arena_printf(s->arena, "q %s plf, %s; CD %s", number_text(s->arena, q.plf, 1),
                                        what_is_on(q.on), number_text(s->arena, combo->cd, 2));
        check.note = strength_note(s, f, &strength, load);
        check_worse(&worst, check);
    }
    worst.name = worst.name ? arena_printf(s->arena, "ply fastening, joint %d", joint) : NULL;
    return worst;
}

/* Fasteners beyond a splice are in other pieces of the plies.  Over a splice: those of the right piece. */
static void piece_around(const struct beam_design *bd, double at_in, double *from, double *to)
{
    for (size_t i = 0; i < bd->inner_count; i++) {
        double splice = length_inches(bd->inner[i].inner->on.at_length);
        if (bd->inner[i].spliced && splice <= at_in)
            *from = splice;
        else if (bd->inner[i].spliced)
            *to = fmin(*to, splice);
    }
}

/* A beam that hangs here: its share crosses within 12 in either side of its hanger (common practice, no source), beside
 * what crosses there anyway. */
static struct check hung_check(struct sizing *s, const struct fastening *f, const struct loads *present,
                               const struct loads *lb, double at_in)
{
    struct check worst = {0};
    double from = 0, to = length_inches(f->bd->cut_length);
    piece_around(f->bd, at_in, &from, &to);
    from = fmax(at_in - 12, from);
    to = fmin(at_in + 12, to);
    double feet = fmax(to - from, 0) / 12;
    const struct loads plf[2] = {side_mean(s, f->bd, 0, from, to), side_mean(s, f->bd, 1, from, to)};
    for (size_t i = 0; i < s->combo_count; i++)
        for (int joint = 1; joint < f->bd->plies && combo_applies(&s->combo[i], present); joint++) {
            const struct combination *combo = &s->combo[i];
            double share = joint_hung_share(f->bd->plies, joint) * combined(combo, lb);
            double line = crossing_of(f->bd, joint, plf, combo).plf * feet;
            struct strength strength = strength_of(f, joint, combo->cd);
            struct check check = check_of("", "common practice; NDS 2018 12.3", share + line,
                                          strength.plf * feet + strength.more_lb, "lb");
            check.combination = combo->name;
            check.at_in = at_in;
            const char *load =
                arena_printf(s->arena,
                             "joint %d within 12 in either side: %s lb of the hung load, %s lb of the joists; %d more "
                             "beside the pattern on each face",
                             joint, number_text(s->arena, share, 0), number_text(s->arena, line, 0),
                             f->bd->beam->more_at_hung.count);
            check.note = strength_note(s, f, &strength, load);
            if (!ratio_holds(check.ratio))
                check.note = arena_printf(s->arena,
                                          "%s; more of them ('more at hung beams'), or structural screws or "
                                          "bolts",
                                          check.note);
            check_worse(&worst, check);
        }
    return worst;
}

/* The trimmers of openings hang on a face likewise. */
static bool add_trimmers(struct sizing *s, const struct fastening *f, const struct loads *present,
                         struct member_checks *checks)
{
    bool any = false;
    for (size_t i = 0; i < s->design->opening_count; i++) {
        const struct opening_design *od = &s->design->openings[i];
        for (int k = 0; k < 2 && od->side && od->side->beam == f->bd->beam && needs_hangers(f->bd->beam); k++) {
            const struct opening_trimmer *trimmer = &od->trimmers[k];
            struct check check = hung_check(s, f, present, &trimmer->beam_lb, length_inches(trimmer->at));
            if (!check.name)
                continue;
            check.name = arena_printf(s->arena, "ply fastening under %s", trimmer_name(s, od, k));
            checks_add(s, checks, check);
            any = true;
        }
    }
    return any;
}

static bool add_hung(struct sizing *s, const struct fastening *f, const struct loads *present,
                     struct member_checks *checks)
{
    bool any = add_trimmers(s, f, present, checks);
    const struct job *job = s->job;
    for (size_t i = 0; i < job->beam_count; i++)
        for (int end = 0; end < 2; end++) {
            const struct beam_end *at = &job->beams[i].end_[end];
            if (at->kind != END_BEAM || &job->beams[at->ref.index] != f->bd->beam)
                continue;
            struct check check =
                hung_check(s, f, present, &s->design->beams[i].end_lb[end], length_inches(at->at_length));
            if (!check.name)
                continue;
            check.name = arena_printf(s->arena, "ply fastening under %s, end %d",
                                      head_name(s->arena, KIND_BEAM, &job->beams[i].head), end + 1);
            checks_add(s, checks, check);
            any = true;
        }
    return any;
}

static void keep_distance(struct sizing *s, const struct fastening *f, struct check *worst, const char *what,
                          double least, double has)
{
    bool large = f->nominal_in >= 0.25 - 1e-9;
    struct check check =
        check_of("ply fastener distances", large ? "NDS 2018 12.5.1" : "NDS 2018 Commentary 12.1.6.6, from memory",
                 least, fmax(has, 0), "in");
    check.note = arena_printf(s->arena, "%s: %s D at least", what, number_text(s->arena, least / f->nominal_in, 1));
    check_worse(worst, check);
}

static void add_distances(struct sizing *s, const struct fastening *f, struct member_checks *checks)
{
    struct check worst = {0};
    if (f->kind == JOINT_NONE || !(f->nominal_in > 0))
        return;
    keep_distance(s, f, &worst, "to the edge", f->least.edge, f->edge_in);
    keep_distance(s, f, &worst, "to the end", f->least.end, f->end_in);
    /* those of the other face come between, in the ply that both reach */
    keep_distance(s, f, &worst, "along a row, both faces", f->least.along, f->spacing_in / f->faces);
    if (f->rows > 1)
        keep_distance(s, f, &worst, "between rows", f->least.between, f->between_in);
    checks_add(s, checks, worst);
    if (f->rows < 2) {
        struct check rows = check_of("rows of ply fasteners", "common practice, no source", 2, f->rows, "rows");
        rows.note = "one row lets the plies turn on each other";
        checks_add(s, checks, rows);
    }
}

bool ply_fastening_known(const struct sizing *s, const struct beam_design *bd)
{
    return bd->beam->ply_fasteners.at && catalog_fastener(s->catalog, bd->beam->ply_fasteners.text);
}

/* Plies so wide in all want load on both faces, or an engineer (from memory). */
#define WIDE_ON_ONE_FACE (7 * LENGTH_INCH)

static void ask_wide(struct sizing *s, const struct beam_design *bd, const char *id)
{
    bool one_face = !bd->side[0] != !bd->side[1] && needs_hangers(bd->beam);
    if (!one_face || bd->width < WIDE_ON_ONE_FACE || bd->beam->specified_by.at)
        return;
    diag_add(
        s->diags, DIAG_S005, place_of(bd->beam->member.at, &bd->beam->head),
        "%s is %s wide in %d plies and joists hang on one face only: 7 in and wider wants load on both faces (from "
        "memory); take fewer or deeper plies, or write 'specified by'",
        id, length_tape(s->arena, bd->width), bd->plies);
}

void ply_fastening_check(struct sizing *s, size_t index, const struct loads *present, struct member_checks *checks)
{
    const struct beam_design *bd = &s->design->beams[index];
    if (bd->plies < 2)
        return;
    ask_wide(s, bd, checks->id);
    if (!ply_fastening_known(s, bd))
        return;
    struct fastening f = fastening_of(s, bd);
    bool side = needs_hangers(bd->beam) && (bd->side[0] || bd->side[1]);
    for (int joint = 1; side && joint < bd->plies; joint++)
        checks_add(s, checks, joint_check(s, &f, present, joint));
    bool hung = add_hung(s, &f, present, checks);
    if (side || hung) {
        add_distances(s, &f, checks);
        basis_add(s, "between plies: equal plies of one wood, each an equal share; joists and beams hang on the faces, "
                     "posts and walls stand on all plies alike; dead load always, other loads on either side alone");
    } else {
        basis_add(s, arena_printf(s->arena,
                                  "%s: nothing hangs on its faces: its ply fasteners only keep the plies together",
                                  checks->id));
    }
}
