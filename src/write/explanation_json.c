#include "words/words.h"
#include "write/figures.h"
#include "write/json.h"
#include "write/model.h"

static const char *const SI_UNITS[] = {
    [GB_LENGTH] = "m",          [GB_AREA] = "m2",
    [GB_VOLUME] = "m3",         [GB_MASS] = "kg",
    [GB_DENSITY] = "kg/m3",     [GB_TEMP] = "c",
    [GB_DURATION] = "s",        [GB_SHARE] = "share",
    [GB_SLOPE] = "share",       [GB_SPEED] = "m/s",
    [GB_TREAD_PACE] = "1/s",    [GB_AREA_PACE] = "m2/s",
    [GB_VOLUME_PACE] = "m3/s",  [GB_JOINT_RATE] = "m/m2",
    [GB_MORTAR_RATE] = "m3/m2", [GB_EVAPORATION] = "kg/m2/s",
    [GB_PRESSURE] = "pa",       [GB_PLAIN] = "1",
    [GB_MINOR_UNITS] = "minor",
};
_Static_assert(sizeof SI_UNITS / sizeof SI_UNITS[0] == GB_MINOR_UNITS + 1,
               "a unit for every kind");

static json_t *inputs_of(const gb_why *why) {
    json_t *list = json_array();
    for (size_t i = 0; i < why->input_count && list != NULL; i++)
        if (json_array_append_new(
                list, json_integer((json_int_t)why->inputs[i]->number)) != 0) {
            json_decref(list);
            return NULL;
        }
    return list;
}

static json_t *place_of(const gb_place *place, gb_arena *arena) {
    return json_pack("{s:s, s:i, s:s, s:s}", "file", gb_clean_copy(place->file, arena),
                     "line", place->line, "key", place->key, "text",
                     gb_clean_copy(place->text, arena));
}

static bool add(json_t *object, const char *key, json_t *value) {
    return json_object_set_new(object, key, value) == 0;
}

/* What is NULL is left out. json_pack could do so too, but then it also leaves out what
   it had no memory for, and says nothing. */
static bool add_text(json_t *object, const char *key, const char *text) {
    return text == NULL || add(object, key, json_string(text));
}

static json_t *why_of(const gb_why *why, gb_arena *arena) {
    const char *of = why->of == NULL ? NULL : gb_clean_copy(why->of, arena);
    const char *source =
        why->source == NULL ? NULL : gb_clean_copy(gb_tr(why->source), arena);
    json_t *node = json_object();
    bool good = add(node, "node", json_integer((json_int_t)why->number)) &&
                add_text(node, "name", why->name) && add_text(node, "of", of) &&
                add(node, "value", json_real(why->value)) &&
                add_text(node, "unit", SI_UNITS[why->unit]) &&
                add_text(node, "formula", why->formula) &&
                (why->formula == NULL || add(node, "inputs", inputs_of(why))) &&
                (why->place == NULL || add(node, "place", place_of(why->place, arena))) &&
                add_text(node, "source", source);
    if (good)
        return node;
    json_decref(node);
    return NULL;
}

static json_t *explained_of(const gb_explained *e, gb_system system, gb_arena *arena) {
    gb_text shown;
    gb_text_init(&shown, arena);
    gb_show_figure(e->figure, system, &shown);
    return json_pack("{s:i, s:s, s:s, s:s, s:s, s:I}", "block", (int)e->block, "top",
                     gb_row_name(e->top->code), "row", gb_row_name(e->row->code),
                     "figure", e->figure->name, "shown", gb_text_get(&shown), "node",
                     (json_int_t)e->why->number);
}

/* Marks a reason and all that it rests on; inputs bear smaller numbers, so going down the
   list reaches each after all that rest on it. */
static void mark(const gb_explanation *e, bool *used) {
    for (size_t i = e->why_count; i > 0; i--)
        for (size_t k = 0; used[i - 1] && k < e->whys[i - 1]->input_count; k++)
            used[e->whys[i - 1]->inputs[k]->number] = true;
}

static json_t *nodes_of(const gb_explanation *e, const bool *used, gb_arena *arena) {
    json_t *list = json_array();
    for (size_t i = 0; i < e->why_count && list != NULL; i++)
        if (used[i] && json_array_append_new(list, why_of(e->whys[i], arena)) != 0) {
            json_decref(list);
            return NULL;
        }
    return list;
}

gb_status gb_write_explanation_json(const gb_explanation *e, const char *wanted,
                                    gb_text *to) {
    bool *used = gb_arena_take(to->arena, e->why_count + 1, sizeof *used);
    json_t *figures = json_array();
    for (size_t i = 0; i < e->figure_count && used != NULL && figures != NULL; i++) {
        const gb_explained *figure = &e->figures[i];
        if (wanted != NULL && !gb_is_figure(e, figure, wanted))
            continue;
        used[figure->why->number] = true;
        json_t *one = explained_of(figure, e->sheet->system, to->arena);
        if (json_array_append_new(figures, one) != 0) {
            json_decref(figures);
            figures = NULL;
        }
    }
    if (used == NULL || figures == NULL) {
        json_decref(figures);
        return GB_NO_MEMORY;
    }
    mark(e, used);
    json_t *nodes = nodes_of(e, used, to->arena);
    const gb_row *number = gb_number_row(e->sheet);
    const char *plan = number == NULL ? NULL : number->figures[0].text;
    json_t *root = json_object();
    if (!add_text(root, "of", e->sheet->kind) || !add_text(root, "number", plan) ||
        !add(root, "figures", json_incref(figures)) || !add(root, "nodes", nodes)) {
        json_decref(root);
        root = NULL;
    }
    json_decref(figures);
    return gb_dump_json(root, e->sheet->language, "explanation", to);
}
