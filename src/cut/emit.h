/* From the solver's plan back to the form's own types and stocks. */
#ifndef SAWBILL_CUT_EMIT_H
#define SAWBILL_CUT_EMIT_H

#include "work.h"

/* `best` and `dual` of the work as patterns and certificate of the form, in the arena. */
void emit_plan(struct arena *arena, const struct form *form, const struct work *work, struct form_result *result);
void emit_certificate(struct arena *arena, const struct form *form, const struct work *work,
                      struct form_result *result);

#endif
