#include "read/log_reader.h"

#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

void gb_begin_log_row(gb_log_reader *r) {
    r->row = (gb_log_row){.bags = GB_NONE,
                          .water = {GB_NONE},
                          .air = {GB_NONE},
                          .start_s = -1,
                          .stop_s = -1};
    r->bad = r->dated = r->timed = false;
    r->filled = 0;
    r->start = r->stop = -1;
}

static bool is_filled(const gb_log_reader *r, gb_log_role role) {
    return (r->filled & 1U << role) != 0;
}

/* A bit for each role whose cell no row may leave empty. */
enum {
    NEEDED = 1U << GB_LOG_DATE | 1U << GB_LOG_TIME | 1U << GB_LOG_MIX |
             1U << GB_LOG_BATCH | 1U << GB_LOG_BAGS
};

static void check_needed(gb_log_reader *r) {
    unsigned empty = NEEDED & ~r->filled;
    for (size_t i = 0; empty != 0 && i < r->head->count; i++)
        if ((empty & 1U << r->head->roles[i]) != 0)
            GB_REFUSE(r, "'%s' is empty; every batch has one", r->head->names[i]);
}

static const char *shown(gb_log_reader *r, gb_moment at) {
    gb_text text;
    gb_text_init(&text, r->arena);
    gb_print_moment(&text, at, 0);
    return gb_text_get(&text);
}

static void check_times(gb_log_reader *r) {
    gb_log_row *row = &r->row;
    if (!r->dated || !r->timed)
        return;
    row->at.s = r->date + r->time;
    if (r->last_line > 0 && row->at.s < r->last_at.s)
        GB_REFUSE(r,
                  "%s is earlier than %s of line %d; rows stand by the time of first "
                  "water: put it in its place",
                  shown(r, row->at), shown(r, r->last_at), r->last_line);
    r->last_at = row->at;
    r->last_line = r->csv.line;
}

static const char *clock_of(gb_log_reader *r, int64_t s) {
    gb_text text;
    gb_text_init(&text, r->arena);
    for (int64_t part = s / 3600, i = 0; i < 2; i++, part = s / 60 % 60) {
        gb_text_add(&text, i > 0 ? ":" : "");
        gb_text_add(&text, part < 10 ? "0" : "");
        gb_text_add_int(&text, part);
    }
    return gb_text_get(&text);
}

static void check_placing(gb_log_reader *r) {
    if (is_filled(r, GB_LOG_START) != is_filled(r, GB_LOG_STOP))
        GB_REFUSE(r, "'start' and 'stop' belong together; write both or none");
    if (r->timed && r->start >= 0 && r->start < r->time)
        GB_REFUSE(
            r,
            "'start' is %s, and first water was at %s; 'time', 'start' and 'stop' "
            "follow one another on one day, and work over midnight is written as two "
            "rows",
            clock_of(r, r->start), clock_of(r, r->time));
    if (r->start >= 0 && r->stop >= 0 && r->stop < r->start)
        GB_REFUSE(
            r,
            "'stop' is %s, and 'start' is %s; 'time', 'start' and 'stop' follow one "
            "another on one day, and work over midnight is written as two rows",
            clock_of(r, r->stop), clock_of(r, r->start));
    if (!r->timed || r->start < 0 || r->stop < 0)
        return;
    r->row.start_s = (int32_t)(r->start - r->time);
    r->row.stop_s = (int32_t)(r->stop - r->time);
}

static size_t mix_index(const gb_log_reader *r, const gb_mix *mix) {
    size_t i = 0;
    while (i + 1 < r->job->mix_count && r->job->mixes[i] != mix)
        i++;
    return i;
}

static void check_number(gb_log_reader *r) {
    if (r->row.mix == NULL || r->row.batch == 0)
        return;
    size_t *last = &r->numbers[mix_index(r, r->row.mix)];
    if (r->row.batch <= *last)
        GB_REFUSE(r, "batch %zu of '%s' is not above the one before, %zu; number them on",
                  (size_t)r->row.batch, r->row.mix->id, *last);
    else
        *last = r->row.batch;
}

/* The only piece that a mix fills; NULL when there are several. */
static const gb_piece *only_piece(const gb_log_reader *r, const gb_mix *mix) {
    const gb_piece *only = NULL;
    for (size_t i = 0; i < r->job->piece_count; i++)
        for (size_t k = 0; k < r->job->pieces[i].layer_count; k++) {
            if (strcmp(r->job->pieces[i].layers[k].mix.text, mix->id) != 0)
                continue;
            if (only != NULL && only != &r->job->pieces[i])
                return NULL;
            only = &r->job->pieces[i];
        }
    return only;
}

/* A mix that fills two layers of a piece may set it twice. */
static void add_to_sum(gb_log_reader *r, const gb_log_set *set) {
    const gb_piece *p = set->piece;
    size_t at = r->first_sum[p - r->job->pieces];
    gb_layer_sum *sum = NULL;
    double most = 0;
    for (size_t k = 0; k < p->layer_count; k++) {
        if (strcmp(r->sums[at + k].mix, r->row.mix->id) != 0)
            continue;
        sum = sum == NULL ? &r->sums[at + k] : sum;
        most += (double)p->count;
    }
    if (sum == NULL) {
        GB_REFUSE(r, "'set' names '%s', which '%s' does not fill", p->name,
                  r->row.mix->id);
        return;
    }
    sum->set += set->count;
    if (!gb_over(sum->set / most, 1.0))
        return;
    gb_text so_far;
    gb_text_init(&so_far, r->arena);
    gb_log_add_number(&so_far, sum->set, 6);
    if (most > (double)p->count)
        GB_REFUSE(r,
                  "with this row %s of '%s' are set, and the job has %zu, filled by '%s' "
                  "%zu times each; check the counts",
                  gb_text_get(&so_far), p->name, p->count, r->row.mix->id,
                  (size_t)(most / (double)p->count));
    else
        GB_REFUSE(
            r, "with this row %s of '%s' are set, and the job has %zu; check the counts",
            gb_text_get(&so_far), p->name, p->count);
}

static void check_sets(gb_log_reader *r) {
    if (r->row.mix == NULL)
        return;
    for (size_t i = 0; i < r->row.set_count; i++) {
        gb_log_set *set = &r->sets[i];
        if (set->piece == NULL && r->sole_mix != r->row.mix) {
            r->sole_mix = r->row.mix;
            r->sole_piece = only_piece(r, r->row.mix);
        }
        if (set->piece == NULL)
            set->piece = r->sole_piece;
        if (set->piece == NULL)
            GB_REFUSE(
                r,
                "'set' does not say which piece, and '%s' fills several; write it as: "
                "5 treads",
                r->row.mix->id);
        else
            add_to_sum(r, set);
    }
}

static const void *kept(gb_log_reader *r, const void *list, size_t count, size_t size) {
    void *copy = count == 0 ? NULL : gb_arena_take(r->arena, count, size);
    if (copy != NULL)
        memcpy(copy, list, count * size);
    else if (count > 0)
        r->diags->no_memory = true;
    return copy;
}

void gb_end_log_row(void *user, size_t cells) {
    gb_log_reader *r = user;
    if (cells != r->head->count)
        GB_REFUSE(
            r,
            "the row has %zu cells and the first one names %zu columns; is the file "
            "cut off here, or a comma too many?",
            cells, r->head->count);
    else
        check_needed(r);
    check_times(r);
    check_placing(r);
    check_number(r);
    check_sets(r);
    if (!r->bad && r->count < r->room) {
        r->row.line = r->csv.line;
        r->row.sets = kept(r, r->sets, r->row.set_count, sizeof *r->sets);
        r->row.depths_m = kept(r, r->depths, r->row.depth_count, sizeof *r->depths);
        r->rows[r->count++] = r->row;
    }
    gb_begin_log_row(r);
}
