/* The arc-flow model of a cutting problem, for general solvers: a flow of sticks along positions, where a piece is an
 * arc as long as it is.  J. M. Valerio de Carvalho, Annals of Operations Research 86:629-659, 1999. */
#ifndef ARC_FLOW_H
#define ARC_FLOW_H

#include "../../src/cut/form.h"

/* What is usually left out is: lengths are divided by their greatest common divisor; each stock's length goes down to
 * the longest filling that fits; a stock is dropped when an endless one is no shorter and costs no more; pieces follow
 * one another longest first, each length no more often than it is wanted, from positions only that can be reached so;
 * what is lost lies at the end of a stick, as one arc to the next length that is sold; arcs have their greatest use. */
struct arc_flow {
    int64_t nodes, arcs; /* without those of the stock */
};
/* As an MPS file, in fields of fixed width.  False when it cannot be written. */
bool arc_flow_write(const struct form *form, const char *path, struct arc_flow *size);

#endif
