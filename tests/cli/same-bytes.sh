#!/usr/bin/env bash
# Two builds (two compilers) and three locales and time zones must write the same bytes.
set -u
one=$(readlink -f "$1")
other=$(readlink -f "$2")
top=$(cd "$(dirname "$0")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
compared=0
failed=0

compare() { # ARGUMENT...
    LC_ALL=C TZ=UTC "$one" "$@" >"$work/first" 2>&1
    for locale in C C.UTF-8 de_DE.UTF-8; do
        LC_ALL=$locale LANGUAGE=de TZ=Asia/Kathmandu "$other" "$@" >"$work/second" 2>&1
        compared=$((compared + 1))
        cmp -s "$work/first" "$work/second" && continue
        failed=$((failed + 1))
        echo "FAILED in $locale: $*"
    done
}

cd "$top" || exit 1
for job in examples/*/job.cfg tests/jobs/*-good/job.cfg; do
    for format in text json; do
        compare sheet "$job" --format "$format"
        compare takeoff "$job" --format "$format" --units metric
    done
    compare takeoff "$job" --format csv
    compare sheet "$job" --explain
done
for job in examples/*/job.cfg; do
    for format in text json csv; do
        compare price "$job" --format "$format"
    done
done
for format in text json csv; do
    compare steps examples/terrace-steps/job.cfg --format "$format"
    compare steps --rise 49in --tread 14in --pitch 1/4in/ft --format "$format"
done
compare takeoff examples/terrace-steps/job.cfg --against examples/library-entrance/job.cfg
compare takeoff examples/terrace-steps/job.cfg --vary "upper run count -1" --format json
compare steps --rise 1.2m --length 3m --units metric --explain
compare mix
compare mix mortar --for core --format json
for mix in $("$one" mix | grep -oE '^[a-z0-9-]+/[a-z0-9-]+'); do
    compare mix "$mix" --make 2ft3
    compare mix "$mix" --units metric
done
for faults in tests/jobs/five-faults-sorted tests/jobs/empty-file; do
    compare check "$faults/job.cfg"
done
compare keys mixes
echo "same bytes: $compared outputs compared, $failed differ"
[ "$failed" = 0 ] && [ "$compared" -gt 100 ]
