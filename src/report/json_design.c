/* The design part of the JSON object: members with their checks, load path, what the design decided. */
#include "json_parts.h"
#include "terminal.h"

#include "sawbill/design.h"

static void add_check(struct json *json, cJSON *list, const struct check *check)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "name", check->name);
    json_text(json, row, "clause", check->clause);
    json_text(json, row, "combination", check->combination);
    json_place(json, row, check->at_in);
    json_number(json, row, "demand", check->demand, 4);
    json_number(json, row, "capacity", check->capacity, 4);
    json_text(json, row, "unit", check->unit);
    json_ratio(json, row, "ratio", check->ratio);
    json_text(json, row, "ratio_text", ratio_text(json->arena, check->ratio));
    json_bool(json, row, "governs", check->governs);
    json_text(json, row, "note", check->note);
    json_text(json, row, "design_values", check->values);
}

static void add_member(struct json *json, cJSON *list, const struct design *design, const struct member_checks *checks)
{
    bool specified = is_specified(design, checks);
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "id", checks->id);
    json_text(json, row, "member", checks->member);
    json_bool(json, row, "specified", specified);
    if (checks->specified || (specified && checks->passes)) /* its ratios stand for themselves: no verdict of ours */
        json_text(json, row, "passes", NULL);
    else
        json_bool(json, row, "passes", checks->passes);
    json_bool(json, row, "unverified", checks->unverified);
    cJSON *list_of_checks = json_array(json, row, "checks");
    for (size_t i = 0; i < checks->count; i++)
        add_check(json, list_of_checks, &checks->check[i]);
}

static void add_inner(struct json *json, cJSON *parent, const struct beam_design *beam)
{
    cJSON *pieces = json_array(json, parent, "ply_pieces_in");
    for (size_t i = 0; i < beam_pieces(beam); i++)
        json_number(json, pieces, NULL, length_inches(beam_piece(beam, i)), 6);
    cJSON *list = json_array(json, parent, "inner_supports");
    for (size_t i = 0; i < beam->inner_count; i++) {
        const struct inner_design *inner = &beam->inner[i];
        cJSON *row = json_object(json, list, NULL);
        json_text(json, row, "post", inner->post ? head_name(json->arena, KIND_POST, &inner->post->post->head) : NULL);
        json_place(json, row, length_inches(inner->inner->on.at_length));
        json_length(json, row, "bearing", inner->bearing);
        json_bool(json, row, "spliced", inner->spliced);
        json_loads(json, row, "lb", &inner->lb);
        json_loads(json, row, "lb_least", &inner->least_lb);
        json_loads(json, row, "lb_all_spans", &inner->full_lb);
        json_number(json, row, "uplift_lb", inner->lb.of[LOAD_UPLIFT], 3);
        json_text(json, row, "hold_down", inner->hold_down ? inner->hold_down->code : NULL);
        json_text(json, row, "held_by", inner->held);
    }
}

static void add_stated(struct json *json, cJSON *object, const char *name, const struct quantity_value *value)
{
    json_text(json, object, name, value->at ? quantity_text(json->arena, value->quantity) : NULL);
}

/* What an engineer drew a beam for, as the job has it. */
static void add_drawn(struct json *json, cJSON *row, const struct beam *beam)
{
    const struct beam_drawn *drawn = &beam->drawn;
    if (!beam->specified_by.at)
        return;
    cJSON *object = json_object(json, row, "engineer");
    json_text(json, object, "specified_by", beam->specified_by.text);
    json_text(json, object, "sheet", beam->sheet.text);
    json_text(json, object, "sheet_date", drawn->date.at ? date_text(json->arena, drawn->date.date) : NULL);
    json_text(json, object, "revision", beam->revision.text);
    json_length(json, object, "clear_span", beam->specified_span.length);
    json_text(json, object, "wall", drawn->wall.at ? drawn->wall.at->value : NULL);
    add_stated(json, object, "dead", &drawn->dead);
    add_stated(json, object, "live", &drawn->live);
    add_stated(json, object, "roof_live", &drawn->roof_live);
    add_stated(json, object, "snow", &drawn->snow);
    add_stated(json, object, "reaction_1", &drawn->reaction[0]);
    add_stated(json, object, "reaction_2", &drawn->reaction[1]);
    if (drawn->plies.at)
        json_integer(json, object, "plies", drawn->plies.count);
    json_text(json, object, "size", drawn->size.text);
    json_text(json, object, "species", drawn->species.text);
    json_text(json, object, "grade", drawn->grade.text);
}

static void add_beam(struct json *json, cJSON *list, const struct beam_design *beam)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "id", head_name(json->arena, KIND_BEAM, &beam->beam->head));
    json_text(json, row, "member", beam->member ? beam->member->code : NULL);
    json_integer(json, row, "plies", beam->plies);
    json_length(json, row, "width", beam->width);
    json_length(json, row, "cut_length", beam->cut_length);
    json_number(json, row, "design_span_in", beam->design_span_in, 6);
    json_number(json, row, "weight_plf", beam->weight_plf, 4);
    json_integer(json, row, "kickers", beam->kickers);
    json_number(json, row, "kicker_spacing_in", beam->kicker_spacing_in, 4);
    json_number(json, row, "dead_sag_in", beam->dead_sag_in, 4);
    json_number(json, row, "dead_sag_at_in", beam->dead_sag_at_in, 3);
    cJSON *ends = json_array(json, row, "ends");
    for (int i = 0; i < 2; i++) {
        cJSON *end = json_object(json, ends, NULL);
        json_integer(json, end, "end", i + 1);
        json_length(json, end, "bearing", beam->bearing[i]);
        json_length(json, end, "overhang", beam->beam->overhang[i].length);
        json_loads(json, end, "lb", &beam->end_lb[i]);
        json_text(json, end, "held_by", beam->held[i]);
        json_loads(json, end, "lb_least", &beam->end_least_lb[i]);
        json_loads(json, end, "lb_all_spans", &beam->end_full_lb[i]);
        json_text(json, end, "hanger", beam->end_hanger[i] ? beam->end_hanger[i]->code : NULL);
        json_number(json, end, "uplift_lb", beam->end_lb[i].of[LOAD_UPLIFT], 3);
        json_text(json, end, "hold_down", beam->hold_down[i] ? beam->hold_down[i]->code : NULL);
    }
    add_inner(json, row, beam);
    add_drawn(json, row, beam->beam);
}

static const char *code_of(const struct hanger *hanger)
{
    return hanger ? hanger->code : NULL;
}

/* Each joist at its place: its own size, how far off the line it stands, what it hangs in. */
static void add_joist_ends(struct json *json, cJSON *row, const struct joist_design *joists)
{
    cJSON *list = json_array(json, row, "ends");
    for (size_t i = 0; i < joists->count; i++) {
        const struct joist_end *end = &joists->end[i];
        cJSON *one = json_object(json, list, NULL);
        json_length(json, one, "at", end->at);
        json_length(json, one, "width", end->width);
        json_length(json, one, "depth", end->depth);
        json_length(json, one, "off_line", end->off_line);
        json_bool(json, one, "doubled", end->doubled);
        json_text(json, one, "hanger", code_of(end->hanger));
    }
}

static void add_joists(struct json *json, cJSON *list, const struct joist_design *joists)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "id", head_name(json->arena, KIND_JOISTS, &joists->joists->head));
    json_text(json, row, "beam", joists->beam ? head_name(json->arena, KIND_BEAM, &joists->beam->head) : NULL);
    json_text(json, row, "side", joists->side == 0 ? "A" : "B");
    json_integer(json, row, "count", (long long)joists->count);
    cJSON *places = json_array(json, row, "places_in");
    for (size_t i = 0; i < joists->count; i++)
        json_number(json, places, NULL, length_inches(joists->place[i]), 6);
    json_loads(json, row, "plf", &joists->line_plf);
    json_loads(json, row, "lb_each", &joists->end_lb);
    json_number(json, row, "uplift_lb_each", joists->end_lb.of[LOAD_UPLIFT], 3);
    add_joist_ends(json, row, joists);
    json_text(json, row, "strap", joists->strap ? joists->strap->code : NULL);
    json_integer(json, row, "tied_pairs", (long long)joists->tied_pairs);
}

static void add_opening(struct json *json, cJSON *list, const struct opening_design *od)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "id", head_name(json->arena, KIND_OPENING, &od->opening->head));
    json_text(json, row, "header", od->header ? od->header->code : NULL);
    json_text(json, row, "trimmer", od->trimmer ? od->trimmer->code : NULL);
    json_integer(json, row, "joists_interrupted", (long long)od->interrupted);
    cJSON *headers = json_array(json, row, "headers");
    for (int i = 0; i < 2; i++) {
        if (!od->headers[i].is)
            continue;
        cJSON *header = json_object(json, headers, NULL);
        json_text(json, header, "end", i ? "far" : "near");
        json_loads(json, header, "lb_each_end", &od->headers[i].end_lb);
        json_text(json, header, "hanger", code_of(od->headers[i].hanger));
        json_text(json, header, "tail_hanger", code_of(od->headers[i].tail_hanger));
    }
    cJSON *trimmers = json_array(json, row, "trimmers");
    for (int i = 0; i < 2; i++) {
        cJSON *trimmer = json_object(json, trimmers, NULL);
        json_place(json, trimmer, length_inches(od->trimmers[i].at));
        json_loads(json, trimmer, "lb_on_beam", &od->trimmers[i].beam_lb);
        json_loads(json, trimmer, "lb_on_far_bearing", &od->trimmers[i].far_lb);
        json_text(json, trimmer, "hanger", code_of(od->trimmers[i].hanger));
    }
}

static void add_post(struct json *json, cJSON *list, const struct post_design *post)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "id", head_name(json->arena, KIND_POST, &post->post->head));
    json_text(json, row, "member", post->member ? post->member->code : NULL);
    json_integer(json, row, "plies", post->plies);
    json_text(json, row, "carries", post->carries);
    json_loads(json, row, "lb", &post->lb);
}

static void add_shore(struct json *json, cJSON *list, const struct shore_design *shore)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "id", head_name(json->arena, KIND_SHORE, &shore->shore->head));
    json_text(json, row, "member", shore->member ? shore->member->code : NULL);
    json_length(json, row, "length", shore->length);
    json_length(json, row, "height", shore->height);
    json_length(json, row, "spacing", shore->spacing);
    json_integer(json, row, "studs", shore->studs);
    json_integer(json, row, "brace_rows", shore->brace_rows);
    json_number(json, row, "stud_lb", shore->stud_lb, 3);
    json_integer(json, row, "posts", shore->posts);
    json_text(json, row, "strongback", shore->strongback ? shore->strongback->code : NULL);
    cJSON *supports = json_array(json, row, "supports");
    for (size_t i = 0; i < shore->shore->supports.count && shore->post_lb; i++) {
        cJSON *support = json_object(json, supports, NULL);
        json_place(json, support, length_inches(shore->shore->supports.item[i]));
        json_number(json, support, "lb", shore->post_lb[i], 3);
    }
}

static void add_stages(struct json *json, cJSON *parent, const struct design *design)
{
    cJSON *stages = json_array(json, parent, "stages");
    for (size_t i = 0; i < design->stage_count; i++) {
        const struct stage *stage = &design->stage[i];
        cJSON *row = json_object(json, stages, NULL);
        json_integer(json, row, "number", stage->number);
        json_text(json, row, "stage", stage->name);
        json_text(json, row, "what", stage->what);
        json_number(json, row, "lb", stage->lb, 3);
        json_text(json, row, "governs", stage->governs);
        json_ratio(json, row, "ratio", stage->ratio);
        json_bool(json, row, "specified", stage->specified);
        json_text(json, row, "rule", stage->rule);
    }
}

static void add_path(struct json *json, cJSON *parent, const struct design *design)
{
    cJSON *path = json_array(json, parent, "load_path");
    for (size_t i = 0; i < design->path_count; i++) {
        const struct path_step *step = &design->path[i];
        cJSON *row = json_object(json, path, NULL);
        json_text(json, row, "from", step->from);
        json_text(json, row, "to", step->to);
        json_place(json, row, step->at_in);
        json_loads(json, row, "lb", &step->lb);
    }
}

static void add_snow(struct json *json, cJSON *list, const struct snow_design *snow)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "area", head_name(json->arena, KIND_AREA, &snow->area->head));
    json_bool(json, row, "on_ground", snow->on_ground);
    json_number(json, row, "given_psf", snow->given_psf, 4);
    json_number(json, row, "ce", snow->ce, 4);
    json_number(json, row, "ct", snow->ct, 4);
    json_number(json, row, "is", snow->is, 4);
    json_number(json, row, "flat_psf", snow->flat_psf, 4);
    json_number(json, row, "least_psf", snow->least_psf, 4);
    json_number(json, row, "roof_psf", snow->roof_psf, 4);
    json_number(json, row, "asd_factor", snow->asd_factor, 4);
    json_number(json, row, "asd_psf", snow->asd_psf, 4);
}

static void add_combination(struct json *json, cJSON *list, const struct combination *combination)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "name", combination->name);
    json_integer(json, row, "number", combination_number(combination));
    json_number(json, row, "cd", combination->cd, 2);
}

void json_design(struct json *json, cJSON *root, const struct design *design)
{
    cJSON *object = json_object(json, root, "design");
    json_bool(json, object, "passes", design->passes);
    json_text(json, object, "standard", design->standard);
    cJSON *combinations = json_array(json, object, "combinations");
    for (size_t i = 0; i < design->combination_count; i++)
        add_combination(json, combinations, &design->combinations[i]);
    cJSON *snow = json_array(json, object, "snow");
    for (size_t i = 0; i < design->snow_count; i++)
        add_snow(json, snow, &design->snow[i]);
    cJSON *members = json_array(json, object, "members");
    for (size_t i = 0; i < design->member_count; i++)
        add_member(json, members, design, design->members[i]);
    add_path(json, object, design);
    cJSON *beams = json_array(json, object, "beams");
    for (size_t i = 0; i < design->beam_count; i++)
        add_beam(json, beams, &design->beams[i]);
    cJSON *joists = json_array(json, object, "joists");
    for (size_t i = 0; i < design->joists_count; i++)
        add_joists(json, joists, &design->joists[i]);
    cJSON *posts = json_array(json, object, "posts");
    for (size_t i = 0; i < design->post_count; i++)
        add_post(json, posts, &design->posts[i]);
    cJSON *openings = json_array(json, object, "openings");
    for (size_t i = 0; i < design->opening_count; i++)
        add_opening(json, openings, &design->openings[i]);
    cJSON *shores = json_array(json, object, "shores");
    for (size_t i = 0; i < design->shore_count; i++)
        add_shore(json, shores, &design->shores[i]);
    add_stages(json, object, design);
    json_texts(json, object, "unchecked", design->unchecked, design->unchecked_count);
    json_texts(json, object, "basis", design->basis, design->basis_count);
}
