/* General solvers run as programs of their own, on a model in a file. */
#ifndef OTHER_SOLVER_H
#define OTHER_SOLVER_H

#include <stdbool.h>

enum other_solver { OTHER_CBC, OTHER_GLPSOL, OTHER_SOLVERS };
struct other_run {
    double seconds; /* of processor time, its own and the system's for it */
    bool proved;    /* it says that its solution is optimal */
    bool late;      /* ended by the limit */
    double cost;    /* where it is proved */
};
const char *other_name(enum other_solver solver);
/* Runs it with its defaults in one thread, in `folder`, which holds the model in `model.mps`; the limit is of its
 * processor time.  False when the program cannot be run. */
bool other_run(enum other_solver solver, const char *folder, double limit, struct other_run *run);

#endif
