/* Wood in service that is not dry, not cool or incised: CM, Ct and Ci of NDS 2018 4.3.3 to 4.3.8, as factors on a row
 * of reference values.  Nothing here allocates. */
#ifndef SAWBILL_SERVICE_H
#define SAWBILL_SERVICE_H

#include <stdbool.h>

#include "sawbill/wood.h"

/* Sustained: to 100 F, to 125 F, to 150 F (Table 2.3.3). */
enum service_heat { HEAT_NONE, HEAT_125, HEAT_150 };
struct service {
    bool wet; /* more than 19 % moisture in service, glulam 16 % */
    bool incised;
    enum service_heat heat;
};
struct service_factors {
    double fb, ft, fv, fc_perp, fc, e; /* e: of Emin, too.  Each is CM x Ct x Ci */
};
bool service_plain(const struct service *service); /* every factor is 1 */
/* Composite lumber is for dry use (8.1.4), and only sawn lumber has incising factors. */
bool service_allowed(enum family_of_wood wood, const struct service *service);
struct service_factors service_factors(const struct design_row *row, enum family_of_wood wood, double ply_in,
                                       double depth_in, const struct service *service);
struct design_row service_row(const struct design_row *row, const struct service_factors *factors);

#endif
