/* Loads as every report shows them. */
#include "load_shown.h"

double load_shown(const struct loads *loads, int column)
{
    static const enum load_source source[SHOWN_LOADS] = {LOAD_DEAD, LOAD_LIVE, LOAD_ATTIC, LOAD_ROOF_LIVE, LOAD_SNOW};
    return loads->of[source[column]] + (source[column] == LOAD_LIVE ? loads->of[LOAD_ATTIC] : 0);
}
