/* A plan and a certificate of the solver checked from the form alone, by code that shares nothing with it. */
#ifndef FORM_CHECK_H
#define FORM_CHECK_H

#include "../../src/cut/form.h"

/* NULL, or what is wrong.  The plan is looked at where there is one. */
const char *form_check(const struct form *form, const struct form_result *result);

#endif
