#include "gaugebox/day.h"

#include "gaugebox/count.h"

#include <math.h>

static const double DAY_S = 24 * 3600.0;

/* ---- the hours --------------------------------------------------------------------- */

/* A clock before the start is of the night after it. */
static double after_start(const gb_crew *crew, gb_duration clock) {
    return clock.s < crew->start.s ? clock.s + DAY_S : clock.s;
}

/* The break that begins first from `from` on; NULL when there is none. */
static const gb_break *next_break(const gb_crew *crew, double from) {
    const gb_break *next = NULL;
    for (size_t i = 0; i < crew->break_count; i++) {
        double begins = after_start(crew, crew->breaks[i].from);
        if (begins >= from && (next == NULL || begins < after_start(crew, next->from)))
            next = &crew->breaks[i];
    }
    return next;
}

gb_status gb_find_hours(const gb_crew *crew, gb_arena *arena, gb_hours_of_day *hours) {
    gb_hours_of_day h = {.start = crew->start.s, .finish = gb_day_end(crew).s};
    gb_window *list = gb_arena_take(arena, crew->break_count + 1, sizeof *list);
    if (list == NULL)
        return GB_NO_MEMORY;
    double last = h.finish - gb_cleaning_time(crew).s;
    double at = h.start;
    while (at < last && h.count <= crew->break_count) {
        const gb_break *rest = next_break(crew, at);
        double to = rest == NULL ? last : after_start(crew, rest->from);
        to = to < last ? to : last;
        if (to > at)
            list[h.count++] = (gb_window){at, to};
        if (rest == NULL)
            break;
        at = after_start(crew, rest->to);
    }
    h.windows = list;
    if (h.count == 0)
        return GB_NOT_POSITIVE;
    *hours = h;
    return GB_OK;
}

size_t gb_day_of(const gb_hours_of_day *hours, double at) {
    return at < hours->start ? 0 : (size_t)((at - hours->start) / DAY_S);
}

/* Half a second: what is told in minutes needs no finer clock, and sums of seconds are
   not exact. */
/* The window in which work at `at` is done, the next one when it lies in none. */
static gb_window window_at(const gb_hours_of_day *hours, double at, size_t *index) {
    size_t day = gb_day_of(hours, at);
    for (;; day++)
        for (size_t i = 0; i < hours->count; i++) {
            double midnight = (double)day * DAY_S;
            gb_window w = {midnight + hours->windows[i].from,
                           midnight + hours->windows[i].to};
            *index = i;
            if (at < w.to - GB_SLACK_S)
                return w;
        }
}

double gb_fit(const gb_hours_of_day *hours, double from, double seconds) {
    size_t index = 0;
    /* All windows of a day, and the first of the next one. */
    for (size_t tried = 0; tried <= hours->count; tried++) {
        gb_window w = window_at(hours, from, &index);
        from = gb_larger(from, w.from);
        if (from + seconds <= w.to + GB_SLACK_S)
            return from;
        from = w.to;
    }
    return GB_NONE;
}

double gb_work_until(const gb_hours_of_day *hours, double from, double seconds) {
    size_t index = 0;
    for (;;) {
        gb_window w = window_at(hours, from, &index);
        from = gb_larger(from, w.from);
        if (from + seconds <= w.to + GB_SLACK_S)
            return from + seconds;
        seconds -= w.to - from;
        from = w.to;
        if (index + 1 == hours->count)
            return GB_NONE;
    }
}

double gb_window_from(const gb_hours_of_day *hours, double at) {
    size_t index = 0;
    return window_at(hours, at, &index).from;
}

double gb_window_to(const gb_hours_of_day *hours, double at) {
    size_t index = 0;
    return window_at(hours, at, &index).to;
}

double gb_next_day(const gb_hours_of_day *hours, double at) {
    return (double)(gb_day_of(hours, at) + 1) * DAY_S + hours->windows[0].from;
}

double gb_next_window(const gb_hours_of_day *hours, double at) {
    size_t index = 0;
    gb_window w = window_at(hours, at, &index);
    return window_at(hours, w.to, &index).from;
}
