/* Where joists are cut and where ply fasteners are driven. */
#include "json_parts.h"

static void add_cut_line(struct json *json, cJSON *list, const struct cut_side *cut)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "joists", head_name(json->arena, KIND_JOISTS, &cut->design->joists->head));
    json_text(json, row, "beam", head_name(json->arena, KIND_BEAM, &cut->design->beam->head));
    json_text(json, row, "side", cut->design->side == 0 ? "A" : "B");
    json_length(json, row, "clearance", cut->clearance);
    json_length(json, row, "cut_line", cut->cut_line);
    if (cut->guide_line > 0) {
        json_length(json, row, "guide_line", cut->guide_line);
    } else {
        json_text(json, row, "guide_line_in", NULL);
        json_text(json, row, "guide_line_text", NULL);
    }
    json_length(json, row, "joist_length", cut->joist_length);
    json_number(json, row, "rests_lb", cut->rests_lb, 3);
    json_number(json, row, "most_lb", cut->most_lb, 3);
}

static void add_row(struct json *json, cJSON *list, const struct ply_layout *kept, int face, int row)
{
    const struct layout_marks *marks = &kept->layout.row[face][row];
    length_t *at = arena_array(json->arena, marks->count, sizeof *at);
    for (size_t i = 0; i < marks->count; i++)
        at[i] = kept->start + marks->at[i];
    cJSON *out = json_object(json, list, NULL);
    json_text(json, out, "face", face == 0 ? "A" : "B");
    json_integer(json, out, "row", row + 1);
    json_lengths(json, out, "marks", at, marks->count);
}

static void add_layout(struct json *json, cJSON *list, const struct ply_layout *kept)
{
    static const char *const how[] = {"even", "fewest", "broken"};
    cJSON *out = json_object(json, list, NULL);
    json_text(json, out, "beam", head_name(json->arena, KIND_BEAM, &kept->design->beam->head));
    json_length(json, out, "start", kept->start);
    json_length(json, out, "length", kept->pattern.length);
    json_text(json, out, "kept", how[kept->layout.kept]);
    if (kept->layout.kept == LAYOUT_EVEN) {
        json_length(json, out, "spacing", kept->layout.spacing);
    } else {
        json_text(json, out, "spacing_in", NULL);
        json_text(json, out, "spacing_text", NULL);
    }
    json_length(json, out, "most", kept->pattern.most);
    json_length(json, out, "least", kept->pattern.least);
    cJSON *rows = json_array(json, out, "rows");
    for (int face = 0; face < kept->layout.faces; face++)
        for (int row = 0; row < kept->layout.rows; row++)
            add_row(json, rows, kept, face, row);
}

void json_layout(struct json *json, cJSON *root, const struct takeoff *takeoff)
{
    cJSON *lines = json_array(json, root, "cut_lines");
    for (size_t i = 0; i < takeoff->cut_side_count; i++)
        add_cut_line(json, lines, &takeoff->cut_side[i]);
    cJSON *layouts = json_array(json, root, "ply_layouts");
    for (size_t i = 0; i < takeoff->ply_layout_count; i++)
        add_layout(json, layouts, &takeoff->ply_layout[i]);
}
