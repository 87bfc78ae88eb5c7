#include "cli/command.h"
#include "words/words.h"

#include <stdio.h>
#include <string.h>

/* Names each figure of the sheet once, for the one who asked for another. */
static void list_figures(gb_run *run, const gb_explanation *e, const char *wanted) {
    gb_text list;
    gb_text_init(&list, &run->arena);
    for (size_t i = 0; i < e->figure_count; i++) {
        gb_text name;
        gb_text_init(&name, &run->arena);
        gb_text_add(&name, i == 0 ? "" : " ");
        gb_text_add(&name, gb_row_name(e->figures[i].row->code));
        gb_text_add(&name, ".");
        gb_text_add(&name, e->figures[i].figure->name);
        if (strstr(gb_text_get(&list), gb_text_get(&name)) == NULL)
            gb_text_add(&list, gb_text_get(&name));
    }
    (void)fprintf(stderr,
                  gb_tr("gaugebox: this sheet has no figure '%.*s'; it has:\n%s\n"),
                  gb_cut(wanted, 60), wanted, gb_text_get(&list));
    run->told = GB_EXIT_USAGE;
}

static gb_status write_all(gb_run *run, const gb_common *common,
                           const gb_explanation *e) {
    bool json = common->format != NULL && strcmp(common->format, "json") == 0;
    if (json)
        return gb_write_explanation_json(e, common->figure, &run->out);
    (void)gb_write_explanation(e, common->figure, &run->out);
    return run->out.failed ? GB_NO_MEMORY : GB_OK;
}

gb_status gb_run_explain(gb_run *run, const gb_common *common, const gb_sheet *sheet) {
    gb_explanation e;
    gb_status status = gb_explain(sheet, &run->places, &run->arena, &e);
    if (status != GB_OK)
        return status;
    if (e.unexplained != NULL) {
        (void)fprintf(
            stderr,
            gb_tr("gaugebox: the program cannot tell how %s.%s came about; this is "
                  "a fault of its own\n"),
            gb_row_name(e.unexplained->row->code), e.unexplained->figure->name);
        run->told = GB_EXIT_IO;
        return GB_OK;
    }
    bool found = common->figure == NULL;
    for (size_t i = 0; i < e.figure_count && !found; i++)
        found = gb_is_figure(&e, &e.figures[i], common->figure);
    if (found)
        return write_all(run, common, &e);
    list_figures(run, &e, common->figure);
    return GB_OK;
}
