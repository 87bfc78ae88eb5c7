#!/usr/bin/env bash
# run.sh BUILD_FOLDER SECONDS: runs each fuzz target for a sixth of the seconds over its
# corpus and the project's own files, prints executions and coverage, and fails on any
# finding. What it finds new stays in found/ of the build folder, where a finding runs
# again as: cd BUILD_FOLDER && bin/fuzz_TARGET FILE
set -u
each=$(($2 / 6))
here=$(cd "$(dirname "$0")" && pwd)
top=$(cd "$here/../.." && pwd)
cd "$1" || exit 2
failed=0

seed() { # TARGET FILE...
    local target=$1
    shift
    rm -rf "seeds/$target"
    mkdir -p "seeds/$target" "found/$target"
    for file in "$@"; do
        cp "$file" "seeds/$target/$(echo "${file#"$top"/}" | tr / _)"
    done
}
seed_all() {
    seed job "$top"/examples/*/job.cfg "$top"/tests/{jobs,cli}/*/job.cfg
    bin/gaugebox starter >seeds/job/starter.cfg
    seed mix "$top"/mixes/*.cfg "$top"/tests/cli/*/mine/*.cfg
    seed price "$top"/examples/*/prices.cfg "$top"/tests/cli/*/{prices,book,other}.cfg
    seed hours "$top"/examples/*/weather.csv "$top"/tests/jobs/*/weather.csv
    seed log "$top"/examples/*/log.csv
    seed quantity
    sed -n 's/.*= "\([^"]*\)".*/\1/p' "$top"/{examples,tests/jobs}/*/job.cfg | sort -u |
        split -l 1 --filter='head -c -1 >seeds/quantity/$FILE' - text-
}

# Keys, choices, examples, units and names, from where the project itself has them, and
# the signs between them.
words() { # KIND...
    for kind in "$@"; do
        bin/gaugebox keys "$kind" | sed -nE 's/^ *([a-z_]+)(  \(required\))?$/"\1"/p'
        bin/gaugebox keys "$kind" | tr -s ' \n' ' ' | grep -oE '"[^"]+"'
    done
    sed -nE 's/.*(UNIT\(|\.name = )("[!-~]+").*/\2/p' "$top/src/engine/units.c"
    sed -nE 's/.*\{ name = ("[^"]+").*/\1/p' "$top/mixes/materials.cfg"
    bin/gaugebox mix | sed -nE 's|^([a-z0-9-]+/[^ ]+).*|"\1"|p'
    printf '"%s"\n' ' = ' '{ ' ' };' '( ' ' );' '[ ' ' ]' '\"' ' x ' '1-1/4' '1:48' \
        '\xc2\xb0' '\xc2\xbd' '\xc3\x97' '\xe2\x80\x99' '\xe2\x80\xb3'
}

run() { # TARGET KIND...
    local target=$1 status executions coverage
    shift
    case $target in
    hours | log) columns "$target" ;;
    *) words "$@" ;;
    esac | sort -u >"$target.dict"
    LSAN_OPTIONS=print_suppressions=0 "bin/fuzz_$target" -max_total_time="$each" \
        -timeout=5 -rss_limit_mb=4096 -max_len=8192 -dict="$target.dict" \
        -print_final_stats=1 -artifact_prefix="found/$target/" \
        "found/$target" "$here/corpus/$target" "seeds/$target" >"$target.log" 2>&1
    status=$?
    executions=$(sed -n 's/^stat::number_of_executed_units: *//p' "$target.log")
    coverage=$(grep -oE 'cov: [0-9]+ ft: [0-9]+' "$target.log" | tail -1)
    echo "fuzz $target: ${executions:-0} executions, ${coverage:-no coverage}, exit $status"
    if [ "$status" != 0 ] || [ "${executions:-0}" = 0 ]; then
        failed=$((failed + 1))
        grep -E 'ERROR|broken|SUMMARY|runtime error|artifact' "$target.log" | head -20
    fi
}

columns() { # TARGET
    sed -nE 's/^    .*\{("[a-z_]+"),.*/\1/p' "$top/src/read/$1_columns.c"
    printf '"%s"\n' 'time,air_f,humidity_pct' 'date,time,mix,batch,bags' '2026-05-12T07:00' \
        '2026-05-12' '07:00' '-05:00' ',' '\x0a' '9999' 'x_' '\"' ' gal' ' x '
}

seed_all
run quantity job mixes materials prices
run job job
run mix mixes
run price prices
run hours prices
run log job
[ "$failed" = 0 ]
