/* ack = CODE reason: notes that the user has seen. */
#include <string.h>

#include "job_internal.h"

/* The code at the start of an acknowledgement, or DIAG_CODE_COUNT. */
static enum diag_code code_of(struct arena *arena, const char *text)
{
    char *word = arena_strndup(arena, text, strcspn(text, " ,:"));
    for (int code = 0; code < DIAG_CODE_COUNT; code++)
        if (name_same(word, diag_code_name((enum diag_code)code)))
            return (enum diag_code)code;
    return DIAG_CODE_COUNT;
}

static bool has_reason(const char *text)
{
    const char *rest = text + strcspn(text, " ,:");
    return rest[strspn(rest, " ,:")] != '\0';
}

void acknowledgements_check(struct checker *checker)
{
    const struct texts_value *acks = &checker->job->facts.ack;
    for (size_t i = 0; i < acks->count; i++) {
        const struct text_value *ack = &acks->item[i];
        enum diag_code code = code_of(checker->arena, ack->text);
        if (code == DIAG_CODE_COUNT)
            diag_add(checker->diags, DIAG_K016, &ack->at->at,
                     "'%s' does not start with the code of a note; write 'ack = K014 REASON'", ack->text);
        else if (!diag_code_can_ack(code))
            diag_add(checker->diags, DIAG_K016, &ack->at->at,
                     "%s (%s) cannot be acknowledged: it must be put right; only notes can", diag_code_name(code),
                     diag_code_title(code));
        else if (!has_reason(ack->text))
            diag_add(checker->diags, DIAG_K016, &ack->at->at,
                     "%s is acknowledged without a reason; write 'ack = %s REASON'", diag_code_name(code),
                     diag_code_name(code));
    }
}

void job_acknowledge(const struct job *job, struct diags *diags)
{
    for (size_t i = 0; i < job->facts.ack.count; i++) {
        const char *text = job->facts.ack.item[i].text;
        enum diag_code code = code_of(diags->arena, text);
        if (code == DIAG_CODE_COUNT || !diag_code_can_ack(code) || !has_reason(text))
            continue;
        for (size_t d = 0; d < diags->count; d++)
            if (diags->item[d].code == code)
                diags->item[d].acknowledged = true;
    }
}
