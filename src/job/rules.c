/* Rules across keys: walks the tables of rules over every section. */
#include "rules.h"

#include <stdarg.h>

/* What a rule misses may stand there misspelt: that fault comes first. */
static bool perhaps_misspelt(const struct ruling *ruling)
{
    if (ruling->rule->code != DIAG_K004 && ruling->rule->code != DIAG_K017)
        return false;
    for (size_t i = 0; i < ruling->checker->meant_count; i++)
        if (ruling->checker->meant[i].head == ruling->head)
            return true;
    return false;
}

void rule_broken(const struct ruling *ruling, const struct entry *entry, const char *format, ...)
{
    if (perhaps_misspelt(ruling))
        return;
    va_list args;
    va_start(args, format);
    const char *text = arena_vprintf(ruling->checker->arena, format, args);
    va_end(args);
    diag_add(ruling->checker->diags, ruling->rule->code, place_of(entry, ruling->head), "%s", text);
}

void judge_stretch(const struct ruling *ruling, const struct length_value *from, const struct length_value *to)
{
    struct arena *arena = ruling->checker->arena;
    if (from->at && to->at && from->length >= to->length)
        rule_broken(ruling, to->at, "'to' of %s, %s, is not beyond 'from', %s", ruling->name,
                    length_tape(arena, to->length), length_tape(arena, from->length));
}

static void judge_all(struct checker *checker, const struct rule *rule)
{
    const struct job *job = checker->job;
    for (size_t i = 0; i < kind_elements(job, rule->kind); i++) {
        const struct head *head = kind_element(job, rule->kind, i);
        if (head->at.line == 0) /* a section that is not there */
            continue;
        const struct ruling ruling = {.checker = checker,
                                      .job = job,
                                      .rule = rule,
                                      .name = section_name(checker->arena, rule->kind, head->id),
                                      .element = head,
                                      .head = head};
        rule->judge(&ruling);
    }
}

void rules_check(struct checker *checker)
{
    const struct rules *const tables[] = {
        &rules_of_frame, &rules_of_inner, &rules_of_openings, &rules_of_obstructions, &rules_of_support,
        &rules_of_path,  &rules_of_money, &rules_of_refusals, &rules_of_loads,        NULL};
    for (size_t t = 0; tables[t]; t++)
        for (size_t i = 0; i < tables[t]->count; i++)
            judge_all(checker, &tables[t]->rule[i]);
}
