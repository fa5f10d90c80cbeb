/* The wood of the job in its service: wet, hot or incised as the job says, else as the tables have it. */
#include "size.h"

#include "sawbill/service.h"
#include "sawbill/text.h"

static struct service service_of(const struct in_service *keys)
{
    static const enum service_heat heat[] = {
        [HEAT_UNANSWERED] = HEAT_NONE, [HEAT_TO_100] = HEAT_NONE, [HEAT_TO_125] = HEAT_125, [HEAT_TO_150] = HEAT_150};
    return (struct service){.wet = keys->moisture.choice == SERVICE_WET,
                            .incised = keys->incised.choice == YES,
                            .heat = heat[keys->heat.choice]};
}

bool serves_wet(const struct in_service *keys)
{
    return keys->moisture.choice == SERVICE_WET;
}

static const char *factors_text(struct sizing *s, const struct service *service, const struct service_factors *f)
{
    struct arena *a = s->arena;
    return arena_printf(a, "CM Ct Ci%s: Fb %s, Ft %s, Fv %s, Fcp %s, Fc %s, E %s",
                        service->incised ? " (incising from memory: unverified)" : "", number_text(a, f->fb, 3),
                        number_text(a, f->ft, 3), number_text(a, f->fv, 3), number_text(a, f->fc_perp, 3),
                        number_text(a, f->fc, 3), number_text(a, f->e, 3));
}

const struct design_row *row_in_service(struct sizing *s, const struct design_row *row, enum family_of_wood wood,
                                        double ply_in, double depth_in, const struct in_service *keys,
                                        const char **text)
{
    struct service service = service_of(keys);
    *text = NULL;
    if (service_plain(&service) || !service_allowed(wood, &service))
        return row;
    struct service_factors factors = service_factors(row, wood, ply_in, depth_in, &service);
    struct design_row *out = arena_alloc(s->arena, sizeof *out);
    *out = service_row(row, &factors);
    *text = factors_text(s, &service, &factors);
    return out;
}

const struct design_row *member_in_service(struct sizing *s, const struct member *member, const struct in_service *keys,
                                           const char **text)
{
    return row_in_service(s, member->values, member->wood, length_inches(member->ply_width),
                          length_inches(member->depth), keys, text);
}

void service_ask(struct sizing *s, const struct member *member, const struct in_service *keys, const char *who,
                 const struct place *at, const char *answer)
{
    struct service service = service_of(keys);
    if (service_allowed(member->wood, &service))
        return;
    const struct entry *entry = service.wet ? keys->moisture.at : keys->incised.at;
    diag_add(s->diags, DIAG_S010, entry ? &entry->at : at,
             "%s is %s, which has no values here for wood that is %s in service (NDS 2018 8.1.4, 4.3.8): take sawn "
             "lumber, or write '%s'",
             who, member->material, service.wet ? "wet" : "incised", answer);
}
