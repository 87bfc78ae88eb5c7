/* Reading files: jobs, the mix table, price books. Every fault is reported with its file
   and line, all of them in one pass; a result is given only when there was none. */
#ifndef GAUGEBOX_READ_H
#define GAUGEBOX_READ_H

#include "gaugebox/buy.h"
#include "gaugebox/log.h"
#include "gaugebox/place.h"

/* Memory from malloc, for arenas outside the engine. */
gb_supply gb_malloc_supply(void);

typedef struct gb_diag {
    const char *file;
    int line; /* 0: the file as a whole */
    const char *text;
    size_t rank; /* of the file, by first mention; set when they are printed */
} gb_diag;

enum { GB_MOST_DIAGS = 200 };

/* The faults found so far. The first GB_MOST_DIAGS are kept, the rest counted. */
typedef struct gb_diags {
    gb_arena *arena;
    gb_diag list[GB_MOST_DIAGS];
    size_t count;
    size_t more;
    bool io; /* one of them is a file that could not be read */
    bool no_memory;
} gb_diags;

void gb_diags_init(gb_diags *diags, gb_arena *arena);
bool gb_diags_any(const gb_diags *diags);
/* Faults so far, those beyond the list counted in. */
size_t gb_diags_count(const gb_diags *diags);

/* Brings the faults into order: by file as first named, then by line. */
void gb_diags_sort(gb_diags *diags);

/* Writes the faults, `file:line: error: text`, in order. */
void gb_diags_print(gb_diags *diags, gb_text *to);

/* The mix table: folders in order of search, the user's before the shipped one. */
typedef struct gb_mix_table gb_mix_table;

/* A table over `folder_count` folders; nothing is read before it is asked for.
   NULL when memory ran out. */
gb_mix_table *gb_mix_table_open(const char *const *folders, size_t folder_count,
                                gb_arena *arena, gb_diags *diags);

/* From now on, what is read by this table and with it is kept in `places`, which the
   caller owns. */
void gb_mix_table_keep_places(gb_mix_table *table, gb_places *places);
gb_places *gb_mix_table_places(const gb_mix_table *table);

/* The mix of that id, its family's file read on the first call. NULL with a fault
   reported at `file`:`line` (the place that named it) when there is none. */
const gb_mix *gb_mix_find(gb_mix_table *table, gb_ref id, const char *file);

/* From now on, the mixes that the job holds itself come first, as "own/name"; NULL: none
   do. Faults in them are reported. */
void gb_mix_table_take_own(gb_mix_table *table, const gb_job *job);

/* All mixes of all families, sorted by id. False with faults reported. */
bool gb_mix_list(gb_mix_table *table, const gb_mix *const **mixes, size_t *count);

/* The mixes of one family, sorted by id; no other family's file is read. False with
   faults reported; one that is not known is a fault at `file`:`line`. */
bool gb_mix_list_family(gb_mix_table *table, gb_ref name, const char *file,
                        const gb_mix *const **mixes, size_t *count);

/* What files call each gb_layer_kind, in its order; ends in NULL. */
extern const char *const GB_LAYER_WORDS[];

/* The one of the `known` words (they end in NULL) that is nearest to one which is none of
   them; NULL when none is near. */
const char *gb_nearest_of(const char *word, const char *const *known);

/* The material of that name, or NULL; reads the materials on the first call. */
const gb_material *gb_material_find(gb_mix_table *table, const char *name);

/* The kind of stone of that name, read on the first call; NULL with a fault reported at
   `file`:`line` when there is none. */
const gb_stone *gb_stone_find(gb_mix_table *table, gb_ref name, const char *file);

/* Of the files of stones that were read so far. */
uint64_t gb_stones_digest(const gb_mix_table *table);

/* Reads one job with all mixes that it names. False with faults reported. */
bool gb_read_job(const char *file, gb_mix_table *table, gb_arena *arena, gb_diags *diags,
                 gb_job *job) GB_MUST_USE;

/* The path of `name` in the folder of `file`, or `name` when it begins at the root. NULL
   without memory. */
const char *gb_path_beside(const char *file, const char *name, gb_arena *arena);

/* Reads hours of weather from a CSV file (RFC 4180): the first row names the columns with
   their units, each row is an hour, and they follow one another. Times without an offset
   of their own are at `offset_s` from UTC. `places` may be NULL. False with every fault
   reported by its line.
 */
bool gb_read_hours(const char *file, int offset_s, gb_arena *arena, gb_diags *diags,
                   gb_places *places, gb_hours *hours) GB_MUST_USE;

/* Loads a whole file of at most 16 MB, ended by NUL. False with the fault reported. */
bool gb_read_text(const char *file, gb_arena *arena, gb_diags *diags, const char **text,
                  size_t *length) GB_MUST_USE;

/* Reads a batch log of that job. False with every fault reported by its line; `head` is
   filled as far as the first row tells it. */
bool gb_read_log(const char *file, const gb_job *job, gb_arena *arena, gb_diags *diags,
                 gb_log_head *head, gb_log *log) GB_MUST_USE;

/* A row to be added to a log, cell by cell as people write them; what is not given is
   NULL. Quantities with their units ("11 qt", "62 F", "1-1/4in 1-3/8in"). */
typedef struct gb_log_entry {
    const char *cells[GB_LOG_ROLES];
} gb_log_entry;

/* The text of a log with one more row, in the order and with the line ends of `text` (of
   `length` bytes, ended by NUL), or with a head of its own where that is empty. The batch
   gets the next number of its mix unless it has one, the mix is the job's only one unless
   it is given. Every rule of a log is checked, of the rows before too. False with the
   faults reported, those of the new row as such. */
bool gb_extend_log(const char *file, const char *text, size_t length,
                   const gb_log_entry *entry, const gb_job *job, gb_arena *arena,
                   gb_diags *diags, const char **longer, size_t *longer_length,
                   size_t *batch) GB_MUST_USE;

/* A key that a command takes as an option, and one as it was typed. */
typedef struct gb_typed_key {
    const char *name;
    const char *arg; /* what stands for its value; NULL: it has none */
    const char *help;
} gb_typed_key;

typedef struct gb_typed {
    const char *key;
    const char *text;
} gb_typed;

/* Key i of a run of steps, from 0; false beyond the last one. */
bool gb_steps_option(size_t i, gb_typed_key *key);

/* Reads a run from options, each key once. False with faults reported. */
bool gb_read_steps(const gb_typed *typed, size_t count, gb_system units,
                   gb_mix_table *table, gb_arena *arena, gb_diags *diags,
                   gb_steps *steps) GB_MUST_USE;

/* The same of a concrete: key i as an option; and a mix that is proportioned for what was
   typed, with the order, check and holds of a shipped one, or of `of` with no more typed
   than how wet sand and stone are. `units` decides which tables are read, unless that is
   typed. */
bool gb_is_of_delivery(const char *concrete_key);
bool gb_concrete_option(size_t i, gb_typed_key *key);
bool gb_read_concrete(const gb_typed *typed, size_t count, gb_system units,
                      const gb_mix *of, gb_mix_table *table, gb_arena *arena,
                      gb_diags *diags, gb_mix *mix) GB_MUST_USE;

/* A concrete that was read, its aggregate now as wet as a job's pile: what keeps it from
   being proportioned is reported at `file` and the line of `concrete`. */
bool gb_check_delivered(const gb_concrete *concrete, const char *file, gb_arena *arena,
                        gb_diags *diags) GB_MUST_USE;

/* A copy of a job with changes such as "bed depth +1/4in" or "treads count -1", each as
   strictly checked as what a file states. False with faults reported. */
bool gb_vary_job(const gb_job *job, const char *const *changes, size_t count,
                 gb_mix_table *table, gb_arena *arena, gb_diags *diags,
                 gb_job *result) GB_MUST_USE;

/* Reads one price book. False with faults reported. */
bool gb_read_prices(const char *file, gb_mix_table *table, gb_arena *arena,
                    gb_diags *diags, gb_price_book *book) GB_MUST_USE;

/* Checks a plan's status and reports it as a fault of the job. True on GB_OK. */
bool gb_report_plan(gb_status status, const gb_job *job, const gb_mix *bad_mix,
                    gb_diags *diags);

/* Reports what a job does not tell and its days need: a start, the pace of each kind of
   layer. True when nothing is missing. */
bool gb_report_no_days(const gb_plan *plan, gb_diags *diags);

/* Reports why a buy list could not be made, as a fault of the price book. */
void gb_report_prices(gb_status status, const gb_price_book *book, gb_diags *diags);

/* The printed reference of every key that a file of that kind ("job", "mixes",
   "materials", "prices") may hold; false for an unknown kind. */
bool gb_print_keys(const char *kind, gb_text *to);

#endif
