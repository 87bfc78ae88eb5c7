#!/usr/bin/env bash
# run.sh BUILD_FOLDER SECONDS: runs each fuzz target for a quarter of the seconds over the
# project's own files, prints executions and coverage, and fails on any finding. What it
# finds new stays in the build folder.
set -u
build=$(readlink -f "$1")
each=$(($2 / 4))
here=$(cd "$(dirname "$0")" && pwd)
top=$(cd "$here/../.." && pwd)
failed=0

seed() { # TARGET FILE...
    local target=$1
    shift
    mkdir -p "$build/seeds/$target" "$build/found/$target"
    for file in "$@"; do
        [ -f "$file" ] && cp "$file" "$build/seeds/$target/$(echo "${file#"$top"/}" | tr / _)"
    done
}
seed job "$top"/examples/*/job.cfg "$top"/tests/jobs/*/job.cfg
seed mix "$top"/mixes/*.cfg
seed price "$top"/examples/*/prices.cfg
seed quantity
sed -n 's/.*= "\([^"]*\)".*/\1/p' "$top"/examples/*/job.cfg | sort -u |
    while read -r text; do
        printf '%s' "$text" >"$build/seeds/quantity/$(printf '%s' "$text" | cksum | cut -d' ' -f1)"
    done

# 25 s: a valid file may plan 100,000 batches, which takes seconds under the sanitizers.
for target in quantity job mix price; do
    LSAN_OPTIONS=print_suppressions=0 "$build/bin/fuzz_$target" -max_total_time="$each" -timeout=25 -rss_limit_mb=4096 \
        -max_len=4096 -dict="$here/words.dict" -print_final_stats=1 \
        -artifact_prefix="$build/found/$target/" \
        "$build/found/$target" "$build/seeds/$target" \
        >"$build/$target.log" 2>&1
    status=$?
    executions=$(sed -n 's/^stat::number_of_executed_units: *//p' "$build/$target.log")
    coverage=$(grep -oE 'cov: [0-9]+ ft: [0-9]+' "$build/$target.log" | tail -1)
    echo "fuzz $target: ${executions:-0} executions, ${coverage:-no coverage}, exit $status"
    if [ "$status" != 0 ] || [ "${executions:-0}" = 0 ]; then
        failed=$((failed + 1))
        grep -E 'ERROR|broken|SUMMARY|runtime error|artifact' "$build/$target.log" | head -20
    fi
    rm -rf /dev/shm/mixes-*
done
[ "$failed" = 0 ]
