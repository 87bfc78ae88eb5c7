/* bench RUNS COMMAND_A [ARG ...] -- COMMAND_B [ARG ...]: runs A and B in turn and prints
   the wall time (least and median), the processor time and the peak memory of each, and
   the median of the ratios A/B pair by pair. */
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

enum { MOST_RUNS = 1000 };

typedef struct series {
    double wall[MOST_RUNS];
    double cpu[MOST_RUNS];
    long peak_kb;
} series;

static double seconds(struct timeval t) {
    return (double)t.tv_sec + (double)t.tv_usec / 1e6;
}

static void run_once(char **command, series *s, int at) {
    struct timespec from;
    struct timespec to;
    struct rusage use;
    int status = 0;
    clock_gettime(CLOCK_MONOTONIC, &from);
    pid_t child = fork();
    if (child == 0) {
        int out = open("/dev/null", O_WRONLY);
        dup2(out, STDOUT_FILENO);
        execv(command[0], command);
        _exit(127);
    }
    if (child < 0 || wait4(child, &status, 0, &use) < 0 || status != 0) {
        (void)fprintf(stderr, "bench: %s did not end well\n", command[0]);
        exit(1);
    }
    clock_gettime(CLOCK_MONOTONIC, &to);
    s->wall[at] =
        (double)(to.tv_sec - from.tv_sec) + (double)(to.tv_nsec - from.tv_nsec) / 1e9;
    s->cpu[at] = seconds(use.ru_utime) + seconds(use.ru_stime);
    if (use.ru_maxrss > s->peak_kb)
        s->peak_kb = use.ru_maxrss;
}

static int by_value(const void *a, const void *b) {
    double x = *(const double *)a;
    double y = *(const double *)b;
    return (x > y) - (x < y);
}

static double median(const double *values, int n) {
    static double sorted[MOST_RUNS];
    memcpy(sorted, values, (size_t)n * sizeof *sorted);
    qsort(sorted, (size_t)n, sizeof *sorted, by_value);
    return sorted[n / 2];
}

static double least(const double *values, int n) {
    double best = values[0];
    for (int i = 1; i < n; i++)
        best = values[i] < best ? values[i] : best;
    return best;
}

static void tell(const char *name, const series *s, int n) {
    printf("  %s  wall least %.2f median %.2f ms, cpu median %.2f ms, peak %ld kB\n",
           name, 1e3 * least(s->wall, n), 1e3 * median(s->wall, n),
           1e3 * median(s->cpu, n), s->peak_kb);
}

int main(int argc, char **argv) {
    static series a;
    static series b;
    static double ratio[MOST_RUNS];
    int runs = argc > 1 ? (int)strtol(argv[1], NULL, 10) : 0;
    int split = 2;
    while (split < argc && strcmp(argv[split], "--") != 0)
        split++;
    if (runs < 1 || runs > MOST_RUNS || split < 3 || split + 1 >= argc) {
        (void)fputs("usage: bench RUNS A [ARG ...] -- B [ARG ...]\n", stderr);
        return 2;
    }
    argv[split] = NULL;
    for (int i = -1; i < runs; i++) { /* the first pair warms up */
        run_once(argv + 2, &a, i < 0 ? 0 : i);
        run_once(argv + split + 1, &b, i < 0 ? 0 : i);
        ratio[i < 0 ? 0 : i] = a.wall[i < 0 ? 0 : i] / b.wall[i < 0 ? 0 : i];
    }
    tell("A", &a, runs);
    tell("B", &b, runs);
    printf("  A/B wall: median of the pairs %.2f, of the least times %.2f\n",
           median(ratio, runs), least(a.wall, runs) / least(b.wall, runs));
    return 0;
}
