/* The counted and priced parts of the JSON object: takeoff, order, estimate, bid, compare. */
#include "json_parts.h"

#include <math.h>

static void add_takeoff_line(struct json *json, cJSON *list, const struct job *job, const struct takeoff_line *line)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "id", line->id);
    json_text(json, row, "what", line->what);
    json_text(json, row, "where", line->where);
    json_decimal(json, row, "count", line->count);
    json_text(json, row, "unit", line->unit);
    json_text(json, row, "counted", line->counted);
    json_text(json, row, "class", class_name(line->class));
    json_text(json, row, "item", line->item);
    if (line->is == LINE_PIECES)
        json_length(json, row, "length", line->length);
    if (takeoff_board_feet(line) > 0)
        json_decimal(json, row, "board_feet", takeoff_board_feet(line));
    json_text(json, row, "loss", takeoff_loss(json->arena, job, line));
    if (line->loss)
        json_percent(json, row, "loss_percent", job->bid.fastener_loss.percent);
    if (line->pounds > 0)
        json_decimal(json, row, "lb", line->pounds);
    json_text(json, row, "code", line->cost_code);
}

static void add_raising(struct json *json, cJSON *list, const struct raising *raising)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "id", head_name(json->arena, KIND_BEAM, &raising->design->beam->head));
    json_number(json, row, "ply_lb", raising->ply_lb, 3);
    json_number(json, row, "beam_lb", raising->beam_lb, 3);
    json_bool(json, row, "whole", raising->whole);
    json_integer(json, row, "people", raising->people);
    json_integer(json, row, "hands", raising->crew);
    json_number(json, row, "shrinkage_in", raising->shrinkage_known ? raising->shrinkage_in : NAN, 3);
    cJSON *ways = json_array(json, row, "way_in");
    for (size_t i = 0; i < raising->way_count; i++) {
        const struct way_in *way = &raising->way[i];
        cJSON *item = json_object(json, ways, NULL);
        json_text(json, item, "what", way->what);
        json_number(json, item, "needs_in", way->needs_in, 3);
        json_number(json, item, "has_in", way->known ? way->has_in : NAN, 3);
        if (way->known)
            json_bool(json, item, "goes", way->goes);
        json_text(json, item, "how", way->how);
    }
}

static void add_debris(struct json *json, cJSON *parent, const struct takeoff *takeoff)
{
    cJSON *object = json_object(json, parent, "debris");
    json_decimal(json, object, "loose_cuft", takeoff->debris_cuft);
    json_decimal(json, object, "lb", takeoff->debris_lb);
    json_integer(json, object, "loads", takeoff->debris_loads);
    cJSON *list = json_array(json, object, "of");
    for (size_t i = 0; i < takeoff->debris_count; i++) {
        const struct takeoff_debris *debris = &takeoff->debris[i];
        cJSON *row = json_object(json, list, NULL);
        json_text(json, row, "what", debris->row->debris);
        json_text(json, row, "per", debris->row->per);
        json_decimal(json, row, "count", debris->count);
        json_decimal(json, row, "loose_cuft", debris->cuft);
        json_decimal(json, row, "lb", debris->pounds);
        json_text(json, row, "source", debris->row->source);
    }
}

static void add_forgotten(struct json *json, cJSON *list, const struct takeoff_forgotten *forgotten)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "line", forgotten->row->line);
    json_text(json, row, "state", forgotten_word(forgotten->state));
    json_text(json, row, "by", forgotten->by);
    json_text(json, row, "why", forgotten->why);
}

static void add_return(struct json *json, cJSON *list, const struct takeoff_return *back)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "what", back->what);
    json_text(json, row, "member", back->member ? back->member->code : NULL);
    if (back->member)
        json_length(json, row, "length", back->length);
    json_integer(json, row, "count", back->count);
    json_text(json, row, "from", back->from);
}

void json_takeoff(struct json *json, cJSON *root, const struct job *job, const struct takeoff *takeoff)
{
    cJSON *list = json_array(json, root, "takeoff");
    for (size_t i = 0; i < takeoff->count; i++)
        add_takeoff_line(json, list, job, &takeoff->line[i]);
    add_debris(json, root, takeoff);
    cJSON *forgotten = json_array(json, root, "usually_forgotten");
    for (size_t i = 0; i < takeoff->forgotten_count; i++)
        add_forgotten(json, forgotten, &takeoff->forgotten[i]);
    cJSON *back = json_array(json, root, "returns");
    for (size_t i = 0; i < takeoff->back_count; i++)
        add_return(json, back, &takeoff->back[i]);
    cJSON *raising = json_array(json, root, "raising");
    for (size_t i = 0; i < takeoff->raising_count; i++)
        add_raising(json, raising, &takeoff->raising[i]);
}

static void add_order_line(struct json *json, cJSON *list, const struct order_line *line)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "id", line->id);
    json_text(json, row, "item", line->item);
    json_text(json, row, "what", line->what);
    json_text(json, row, "supplier", line->price ? line->price->supplier : "shop stock");
    json_decimal(json, row, "net", line->net);
    json_text(json, row, "net_unit", line->unit);
    json_text(json, row, "counted", line->counted);
    json_percent(json, row, "loss_percent", line->loss);
    if (line->fastener) {
        json_decimal(json, row, "pieces", line->pieces);
        if (line->pounds > 0)
            json_decimal(json, row, "lb", line->pounds);
    }
    if (line->board_feet > 0)
        json_decimal(json, row, "board_feet", line->board_feet);
    json_decimal(json, row, "packs", line->packs);
    json_text(json, row, "unit", line->price ? line->price->unit : NULL);
    json_bool(json, row, "cut_charge", line->cut_charge);
    if (line->price)
        json_money(json, row, "price", line->cut_charge ? line->price->cut_charge : line->price->price);
    else
        json_text(json, row, "price", NULL);
    json_money(json, row, "total", line->total);
    json_text(json, row, "class", class_name(line->class));
    json_text(json, row, "code", line->cost_code);
    json_text(json, row, "from", line->from);
}

void json_order(struct json *json, cJSON *root, const struct run *run)
{
    const struct order *order = run->order;
    cJSON *object = json_object(json, root, "order");
    json_text(json, object, "bought_from", run->bought_from);
    cJSON *lines = json_array(json, object, "lines");
    for (size_t i = 0; i < order->count; i++)
        add_order_line(json, lines, &order->line[i]);
    cJSON *suppliers = json_array(json, object, "suppliers");
    for (size_t i = 0; i < order->supplier_count; i++) {
        const struct supplier_total *total = &order->supplier[i];
        cJSON *row = json_object(json, suppliers, NULL);
        json_text(json, row, "name", total->supplier->name);
        json_money(json, row, "goods", total->goods);
        json_money(json, row, "delivery", total->delivery);
        json_percent(json, row, "tax_percent", total->tax_rate);
        json_money(json, row, "tax", total->tax);
    }
}

static void add_labor(struct json *json, cJSON *parent, const struct estimate *estimate)
{
    cJSON *list = json_array(json, parent, "labor");
    for (size_t i = 0; i < estimate->labor_count; i++) {
        const struct labor_line *line = &estimate->labor[i];
        cJSON *row = json_object(json, list, NULL);
        json_text(json, row, "id", line->id);
        json_text(json, row, "what", line->what);
        json_text(json, row, "trade", line->trade ? line->trade->trade : NULL);
        json_decimal(json, row, "count", line->count);
        json_text(json, row, "per", line->per);
        json_decimal(json, row, "hours_each", line->hours_each);
        json_decimal(json, row, "factor", line->factor);
        json_decimal(json, row, "least_hours", line->least);
        json_decimal(json, row, "hours", line->hours);
        json_money(json, row, "rate", line->rate);
        json_money(json, row, "total", line->total);
        json_integer(json, row, "crew", line->crew);
        json_decimal(json, row, "days", line->days);
        json_text(json, row, "counted", line->counted);
    }
}

static void add_estimate_line(struct json *json, cJSON *list, const struct estimate_line *line)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "id", line->id);
    json_text(json, row, "what", line->what);
    json_text(json, row, "class", class_name(line->class));
    json_text(json, row, "unit", line->unit);
    json_decimal(json, row, "count", line->count);
    json_money(json, row, "price", line->price);
    json_money(json, row, "total", line->total);
    if (line->has_own_markup)
        json_percent(json, row, "own_markup_percent", line->own_markup);
    json_text(json, row, "code", line->cost_code);
}

static void add_class(struct json *json, cJSON *list, const struct estimate *estimate, const struct class_total *total)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "class", class_name(total->class));
    bool line = total->own && total->line < estimate->line_count;
    json_text(json, row, "own_markup_line", line ? estimate->line[total->line].id : NULL);
    json_percent(json, row, "overhead_percent", total->overhead_rate);
    json_percent(json, row, "contingency_percent", total->contingency_rate);
    json_percent(json, row, "profit_percent", total->profit_rate);
    json_money(json, row, "direct", total->direct);
    json_money(json, row, "overhead", total->overhead);
    json_money(json, row, "contingency", total->contingency);
    json_money(json, row, "profit", total->profit);
    json_money(json, row, "price", total->price);
}

static void add_totals(struct json *json, cJSON *parent, const struct estimate *estimate)
{
    cJSON *object = json_object(json, parent, "totals");
    json_text(json, object, "method", choice_name("bid", "method", (int)estimate->method));
    json_text(json, object, "tax_mode", choice_name("bid", "tax mode", (int)estimate->tax_mode));
    json_money(json, object, "direct", estimate->direct);
    json_money(json, object, "overhead", estimate->overhead);
    json_money(json, object, "contingency", estimate->contingency);
    json_money(json, object, "profit", estimate->profit);
    json_money(json, object, "before_tax", estimate->before_tax);
    json_money(json, object, "tax", estimate->tax);
    json_money(json, object, "rounding", estimate->rounding);
    json_money(json, object, "price", estimate->price);
    json_decimal(json, object, "hours", estimate->hours);
    json_percent(json, object, "gross_margin_percent", estimate->gross_margin);
    json_percent(json, object, "markup_percent", estimate->markup);
}

void json_estimate(struct json *json, cJSON *root, const struct estimate *estimate)
{
    cJSON *object = json_object(json, root, "estimate");
    cJSON *lines = json_array(json, object, "lines");
    for (size_t i = 0; i < estimate->line_count; i++)
        add_estimate_line(json, lines, &estimate->line[i]);
    add_labor(json, object, estimate);
    json_integer(json, object, "working_days", estimate->working_days);
    cJSON *classes = json_array(json, object, "classes");
    for (size_t i = 0; i < estimate->class_count; i++)
        add_class(json, classes, estimate, &estimate->class_[i]);
    add_totals(json, object, estimate);
}

static void add_alternates(struct json *json, cJSON *parent, const struct outcome *outcome)
{
    cJSON *list = json_array(json, parent, "alternates");
    for (size_t i = 0; i < outcome->alternate_count; i++) {
        const struct alternate_price *price = &outcome->alternate[i];
        cJSON *row = json_object(json, list, NULL);
        json_text(json, row, "id", price->alternate->head.id);
        json_text(json, row, "what", price->alternate->what.text);
        json_bool(json, row, "passes", price->ok);
        if (price->price != 0)
            json_money(json, row, "difference", price->difference);
        else
            json_text(json, row, "difference", NULL);
    }
}

void json_bid(struct json *json, cJSON *root, const struct report *report, const struct estimate *estimate)
{
    const struct job *job = report->job;
    cJSON *object = json_object(json, root, "bid");
    json_money(json, object, "price", estimate->price);
    json_money(json, object, "low_price", estimate->low_price);
    json_money(json, object, "high_price", estimate->high_price);
    json_bool(json, object, "signable", report->signable);
    bool dated = job->facts.date.at && job->bid.valid_for.count > 0;
    json_text(json, object, "valid_until",
              dated ? date_text(json->arena, date_plus(job->facts.date.date, job->bid.valid_for.count)) : NULL);
    cJSON *draws = json_array(json, object, "draws");
    for (size_t i = 0; i < estimate->draw_count; i++) {
        cJSON *row = json_object(json, draws, NULL);
        json_percent(json, row, "percent", estimate->draw[i].percent);
        json_text(json, row, "when", estimate->draw[i].when);
        json_money(json, row, "amount", estimate->draw[i].amount);
    }
    add_alternates(json, object, report->outcome);
}

void json_compare(struct json *json, cJSON *root, const struct outcome *outcome)
{
    cJSON *list = json_array(json, root, "compare");
    for (size_t i = 0; i < outcome->candidate_count; i++) {
        const struct candidate *candidate = &outcome->candidate[i];
        cJSON *row = json_object(json, list, NULL);
        json_text(json, row, "beam", head_name(json->arena, KIND_BEAM, &candidate->beam->head));
        json_text(json, row, "member", candidate->member->code);
        json_integer(json, row, "plies", candidate->plies);
        json_bool(json, row, "passes", candidate->passes);
        json_bool(json, row, "chosen", candidate->chosen);
        json_ratio(json, row, "ratio", candidate->ratio);
        json_text(json, row, "why", candidate->why);
        if (candidate->passes)
            json_money(json, row, "price", candidate->price);
        else
            json_text(json, row, "price", NULL);
    }
}
