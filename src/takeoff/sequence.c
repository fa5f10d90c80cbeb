/* The order of work: of this job, or the one that labor.csv ships. */
#include <limits.h>
#include <string.h>

#include "counting.h"
#include "sawbill/text.h"

struct work_order {
    const struct catalog *catalog;
    const char **name; /* of the job's own order; none: the catalog's */
    size_t count, capacity;
};

static const char WORK[] = "work ";

/* "'demo wall', 'hang joist'": each once. */
struct name_list {
    struct arena *arena;
    const char **name;
    size_t count, capacity;
};

static void list_add(struct name_list *list, const char *name)
{
    for (size_t i = 0; i < list->count; i++)
        if (name_same(list->name[i], name))
            return;
    list->name = arena_more(list->arena, list->name, list->count, &list->capacity, sizeof *list->name);
    list->name[list->count++] = name;
}

static const char *list_text(const struct name_list *list)
{
    struct buffer text = {.arena = list->arena};
    for (size_t i = 0; i < list->count; i++)
        buffer_printf(&text, "%s'%s'", i ? ", " : "", list->name[i]);
    return buffer_text(&text);
}

static void split(struct arena *arena, struct work_order *order, const char *text)
{
    while (*text) {
        size_t length = strcspn(text, ",");
        const char *from = text, *to = text + length;
        while (from < to && *from == ' ')
            from++;
        while (to > from && to[-1] == ' ')
            to--;
        if (to > from) {
            order->name = arena_more(arena, order->name, order->count, &order->capacity, sizeof *order->name);
            order->name[order->count++] = arena_strndup(arena, from, (size_t)(to - from));
        }
        text += length + (text[length] == ',');
    }
}

static bool is_own_work(const struct job *job, const char *name)
{
    for (size_t i = 0; i < job->work_count && strncmp(name, WORK, sizeof WORK - 1) == 0; i++)
        if (name_same(job->works[i].head.id, name + sizeof WORK - 1))
            return true;
    return false;
}

static size_t place_in(const struct work_order *order, const char *name)
{
    size_t at = 0;
    while (at < order->count && !name_same(order->name[at], name))
        at++;
    return at;
}

int place_of_task(const struct work_order *order, const char *task)
{
    const struct task *known = catalog_task(order->catalog, task);
    if (order->count == 0)
        return known ? known->order : -1;
    size_t at = place_in(order, task);
    return at < order->count ? (int)at : -1;
}

static void check_names(struct counting *counting, const struct work_order *order)
{
    struct name_list unknown = {.arena = counting->arena}, twice = {.arena = counting->arena};
    const struct texts_value *sequence = &counting->job->facts.sequence;
    for (size_t i = 0; i < order->count; i++) {
        if (!catalog_task(counting->catalog, order->name[i]) && !is_own_work(counting->job, order->name[i]))
            list_add(&unknown, order->name[i]);
        if (place_in(order, order->name[i]) < i)
            list_add(&twice, order->name[i]);
    }
    if (unknown.count > 0)
        diag_add(counting->diags, DIAG_T005, &sequence->item[0].at->at,
                 "'sequence' names what is no task of labor.csv and no work of this job: %s", list_text(&unknown));
    if (twice.count > 0)
        diag_add(counting->diags, DIAG_T005, &sequence->item[0].at->at, "'sequence' names more than once: %s",
                 list_text(&twice));
}

static void check_shore(struct counting *counting, const struct work_order *order, const struct shore *shore)
{
    const char *name = head_name(counting->arena, KIND_SHORE, &shore->head);
    const struct text_value *of[] = {&shore->from_task, &shore->to_task};
    int place[2] = {0, INT_MAX};
    for (size_t i = 0; i < 2; i++) {
        if (!of[i]->at)
            continue;
        place[i] = place_of_task(order, of[i]->text);
        if (place[i] < 0) {
            diag_add(counting->diags, DIAG_T005, &of[i]->at->at, "'%s' of '%s' is no task of the order of work: '%s'",
                     of[i]->at->key_as, name, of[i]->text);
            return;
        }
    }
    if (place[0] > place[1])
        diag_add(counting->diags, DIAG_T005, &shore->to_task.at->at,
                 "'%s' is built for '%s' and down before it, after '%s'", name, shore->from_task.text,
                 shore->to_task.text);
}

const struct work_order *work_order_of(struct counting *counting)
{
    struct work_order *order = arena_alloc(counting->arena, sizeof *order);
    const struct texts_value *sequence = &counting->job->facts.sequence;
    order->catalog = counting->catalog;
    for (size_t i = 0; i < sequence->count; i++)
        split(counting->arena, order, sequence->item[i].text);
    check_names(counting, order);
    for (size_t i = 0; i < counting->job->shore_count; i++)
        check_shore(counting, order, &counting->job->shores[i]);
    return order;
}

/* Just before the first task of the order whose name begins with "final"; with none of them, last. */
static int place_before_final(const struct counting *counting)
{
    static const char FINAL[] = "final";
    int least = INT_MAX;
    for (size_t i = 0; i < counting->catalog->task_count; i++) {
        const char *name = name_fold(counting->arena, counting->catalog->tasks[i].task);
        int place = strncmp(name, FINAL, sizeof FINAL - 1) == 0 ? place_of_task(counting->order, name) : -1;
        if (place >= 0 && place < least)
            least = place;
    }
    return least == INT_MAX ? INT_MAX : least - 1;
}

/* Work of the job's own that the order does not name: where `after task` says.  Its lines come after those of tasks,
 * and equal places stay as they are counted. */
static int place_of_own(struct counting *counting, const char *id)
{
    for (size_t i = 0; i < counting->job->work_count; i++) {
        const struct text_value *after = &counting->job->works[i].after_task;
        if (!name_same(counting->job->works[i].head.id, id) || !after->at)
            continue;
        int place = place_of_task(counting->order, after->text);
        if (place < 0)
            diag_add(counting->diags, DIAG_T005, &after->at->at,
                     "'after task' of '%s' is no task of the order of work: '%s'",
                     head_name(counting->arena, KIND_WORK, &counting->job->works[i].head), after->text);
        return place < 0 ? INT_MAX : place;
    }
    return place_before_final(counting);
}

void order_work(struct counting *counting)
{
    struct name_list missing = {.arena = counting->arena};
    for (size_t i = 0; i < counting->takeoff->count; i++) {
        struct takeoff_line *line = &counting->takeoff->line[i];
        if (line->is != LINE_LABOR)
            continue;
        const char *name =
            line->task ? line->task->task : arena_printf(counting->arena, "%s%s", WORK, line->id + sizeof WORK - 1);
        int place = place_of_task(counting->order, name);
        if (place < 0)
            place = line->task ? INT_MAX : place_of_own(counting, line->id + sizeof WORK - 1);
        line->in_work = place;
        if (place == INT_MAX && line->task)
            list_add(&missing, name);
    }
    if (missing.count > 0)
        diag_add(counting->diags, DIAG_T005, &counting->job->facts.sequence.item[0].at->at,
                 "'sequence' leaves out work that this job has: %s", list_text(&missing));
}
