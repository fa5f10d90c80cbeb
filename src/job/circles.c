/* K012: what stands or hangs on itself.  Beams, posts, blocks and walls are nodes; each has a few references down. */

#include "job_internal.h"

enum { DOWN_MOST = 2 + BEAM_INNER_MOST };
enum mark { UNSEEN, OPEN, DONE };
struct node {
    enum kind kind;
    size_t index;
};
struct search {
    struct checker *checker;
    enum mark *mark[KIND_COUNT];
    struct node *stack;
    size_t depth;
};

static size_t add_down(const struct ref_value *ref, const struct ref_value *down[DOWN_MOST], size_t count)
{
    if (ref_found(ref))
        down[count++] = ref;
    return count;
}

static size_t go_down_inner(const struct beam *beam, const struct ref_value *down[DOWN_MOST], size_t count)
{
    for (size_t i = 0; i < beam->inner.count && count < DOWN_MOST; i++)
        count = add_down(&beam->inner.item[i].on.ref, down, count);
    return count;
}

/* What a node stands or hangs on. */
static size_t go_down(const struct job *job, struct node node, const struct ref_value *down[DOWN_MOST])
{
    switch (node.kind) {
    case KIND_BEAM:
        return go_down_inner(&job->beams[node.index], down,
                             add_down(&job->beams[node.index].end_[1].ref, down,
                                      add_down(&job->beams[node.index].end_[0].ref, down, 0)));
    case KIND_POST:
        return add_down(&job->posts[node.index].stands_on, down, 0);
    case KIND_BLOCK:
        return add_down(&job->blocks[node.index].stands_on, down, 0);
    case KIND_WALL:
        return add_down(&job->walls[node.index].on, down, 0);
    default:
        return 0;
    }
}

static const char *name_of(const struct search *search, struct node node)
{
    return head_name(search->checker->arena, node.kind, kind_element(search->checker->job, node.kind, node.index));
}

/* The ring from its first node on the stack, closed by `ref`. */
static void report(const struct search *search, size_t first, const struct ref_value *ref)
{
    struct buffer ring = {.arena = search->checker->arena};
    for (size_t i = first; i < search->depth; i++)
        buffer_printf(&ring, "%s on ", name_of(search, search->stack[i]));
    buffer_add(&ring, name_of(search, search->stack[first]));
    diag_add(search->checker->diags, DIAG_K012, &ref->at->at,
             "%s: nothing carries the ring; one of them must reach the ground", buffer_text(&ring));
}

/* Depth first; the stack holds every node at most once, so the recursion ends. */
static void visit(struct search *search, struct node node)
{
    const struct ref_value *down[DOWN_MOST] = {0};
    size_t count = go_down(search->checker->job, node, down);
    search->mark[node.kind][node.index] = OPEN;
    search->stack[search->depth++] = node;
    for (size_t i = 0; i < count; i++) {
        struct node next = {.kind = down[i]->kind, .index = down[i]->index};
        enum mark mark = search->mark[next.kind][next.index];
        if (mark == UNSEEN)
            visit(search, next);
        for (size_t at = 0; mark == OPEN && at < search->depth; at++)
            if (search->stack[at].kind == next.kind && search->stack[at].index == next.index)
                report(search, at, down[i]);
    }
    search->depth--;
    search->mark[node.kind][node.index] = DONE;
}

void circles_find(struct checker *checker)
{
    static const enum kind standing[] = {KIND_BEAM, KIND_POST, KIND_BLOCK, KIND_WALL};
    struct search search = {.checker = checker};
    size_t nodes = 0;
    for (int kind = 0; kind < KIND_COUNT; kind++) {
        size_t count = kind_elements(checker->job, (enum kind)kind);
        search.mark[kind] = arena_array(checker->arena, count, sizeof **search.mark);
        nodes += count;
    }
    search.stack = arena_array(checker->arena, nodes, sizeof *search.stack);
    for (size_t k = 0; k < sizeof standing / sizeof *standing; k++)
        for (size_t i = 0; i < kind_elements(checker->job, standing[k]); i++)
            if (search.mark[standing[k]][i] == UNSEEN)
                visit(&search, (struct node){.kind = standing[k], .index = i});
}
