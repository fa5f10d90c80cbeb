/* A beam under a floor, one end on a post and footing, the other in a pocket; the joists' seats planed; snow on the
 * ground.  Invented. */
#include "house.h"

#include <string.h>

#include "sawbill/job.h"

static const char before[] = "[job]\nname = house\ndate = 2026-01-05\nstatus = bid\ncatalogs = catalogs\n"
                             "unusual = none\n"
                             "[roof]\nframe = none above\nbraces = none\n"
                             "[joists north]\nkind = sawn joist\nsize = 2x10\nspecies = Douglas Fir-Larch\n"
                             "grade = No.2\nspacing = 16 in\nfirst joist = 8 in\nrun = 12 ft\nover the wall = butted\n"
                             "ties the roof = no\nseat planed = 1 in\narea = area floor\n"
                             "[beam B1]\nset = flush\nclear span = 8 ft\njoists A = joists north\nend 1 = post P1\n"
                             "end 2 = pocket\nbearing 2 = 3-1/2 in\nwall at end 1 = across\nwall at end 2 = across\n"
                             "above = nothing\nmember = DFL2-2X10\nplies = 3\nply fasteners = NAIL-16D-COMMON\n"
                             "[post P1]\nmember = SPF-STUD-2X4\nplies = 3\nheight = 84 in\nbraced = both\n"
                             "stands on = footing F1\n"
                             "[wall W1]\nstatus = comes out\nunder = beam B1\nlength = 8 ft\nheight = 8 ft\n"
                             "bracing = no\n"
                             "[shore S1]\nholds = joists north\nset back = 3 ft\nstuds = SPF-STUD-2X4\n"
                             "spacing = 16 in\nheight = 94-1/2 in\nbrace rows = 1\nstands on = slab\ndays = 5\n"
                             "[bid]\nmethod = add\ntax = 0 %\noverhead = 10 %\ncontingency = 5 %\nprofit = 10 %\n";

const struct design *house_size(struct published *p, const struct house *house)
{
    const char *text = arena_printf(p->arena,
                                    "%s[footing F1]\nstatus = new\nsize = 30 in\nthickness = 14 in\nsoil = %s\n"
                                    "[area floor]\ndead = 10 psf\nlive = 40 psf\nlive is = %s\nsnow = 100 psf\n"
                                    "snow is = on the ground\nsnow level = allowable\n",
                                    before, house->soil, house->live_is);
    struct diags said = {.arena = p->arena};
    struct entries entries = {0};
    entries_read(p->arena, "house.ini", text, strlen(text), &entries, &said);
    const struct job *job = job_check(p->arena, "house.ini", &entries, &said);
    if (diag_count(&said, DIAG_STOP) > 0) {
        for (size_t i = 0; i < said.count; i++)
            diag_add(p->diags, said.item[i].code, &said.item[i].at, "%s", said.item[i].text);
        return NULL;
    }
    const struct catalog *catalog =
        catalog_read(p->arena, arena_printf(p->arena, "%s/catalogs", p->source), NULL, &said);
    return size_job(p->arena, job, catalog, NULL, &said);
}

const struct check *house_check(const struct design *design, const char *member, const char *name)
{
    for (size_t i = 0; design && i < design->member_count; i++)
        for (size_t k = 0; k < design->members[i]->count; k++)
            if (!strcmp(design->members[i]->id, member) && !strcmp(design->members[i]->check[k].name, name))
                return &design->members[i]->check[k];
    return NULL;
}
