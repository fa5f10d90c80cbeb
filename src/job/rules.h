/* Rules across the keys of one section, and between sections. */
#ifndef SAWBILL_JOB_RULES_H
#define SAWBILL_JOB_RULES_H

#include "job_internal.h"

struct rule;
/* One rule at one section. */
struct ruling {
    struct checker *checker;
    const struct job *job;
    const struct rule *rule;
    const char *name; /* "[beam B1]" */
    const void *element;
    const struct head *head;
};
struct rule {
    enum kind kind;
    enum diag_code code;
    void (*judge)(const struct ruling *ruling);
};
struct rules {
    const struct rule *rule;
    size_t count;
};
extern const struct rules rules_of_frame, rules_of_inner, rules_of_openings, rules_of_obstructions, rules_of_support,
    rules_of_path, rules_of_money, rules_of_refusals, rules_of_loads;

/* Adds the rule's message at an entry, or at the section when entry is NULL. */
void rule_broken(const struct ruling *ruling, const struct entry *entry, const char *format, ...)
    __attribute__((format(printf, 3, 4)));
/* No place along a beam lies farther from end 1: a foot beyond the clear span and overhangs is on no bearing of the
 * trade any more. */
length_t farthest_place(const struct beam *beam);
/* from stands before to, where both are written. */
void judge_stretch(const struct ruling *ruling, const struct length_value *from, const struct length_value *to);

#endif
