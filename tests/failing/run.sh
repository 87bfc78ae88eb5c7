#!/usr/bin/env bash
# Fails every allocation and every write in turn, until a run meets none; of those behind
# the first 300, every seventh. A run that met one must end with exit status 3 and a reason,
# write no sheet, and leave no file behind; it must never crash.
set -u
program=$(readlink -f "$1")
shim=$(readlink -f "$2")
examples=$(cd "$(dirname "$0")/../../examples" && pwd)
work=$(mktemp -d)
good=$(mktemp -d)
trap 'rm -rf "$work" "$good"' EXIT
cp "$examples"/library-entrance/*.cfg "$examples"/library-entrance/log.csv "$work"
cp "$examples"/mill-landing/job.cfg "$work/mill.cfg"
cp "$examples"/mill-landing/weather.csv "$work"
cd "$work" || exit 1
failed=0
total=0

as_good() {
    cmp -s std.txt "$good/std.txt" && { [ ! -e "$good/out.txt" ] || cmp -s out.txt "$good/out.txt"; }
}

try_all() { # VARIABLE COMMAND [ARGUMENT...]
    local variable=$1 n=1 tried=0 status
    shift
    rm -f out.txt
    "$program" "$@" >"$good/std.txt" 2>/dev/null
    rm -f "$good/out.txt"
    [ -e out.txt ] && mv out.txt "$good"
    while :; do
        rm -f out.txt
        rm -f "$good/fired"
        env LD_PRELOAD="$shim" "$variable=$n" FIRED="$good/fired" "$program" "$@" >std.txt 2>err.txt
        status=$?
        [ "$status" = 0 ] && [ ! -e "$good/fired" ] && break
        tried=$((tried + 1))
        # A library may ask again for less: then all is as if nothing had failed.
        if [ "$status" = 0 ] && as_good; then
            n=$((n + (n < 300 ? 1 : 7)))
            rm -f out.txt
            continue
        fi
        if [ "$status" != 3 ] || [ ! -s err.txt ]; then
            echo "FAILED: $variable=$n $*: exit status $status, $(wc -c <err.txt) bytes told"
            failed=$((failed + 1))
        fi
        if [ -e out.txt ] || [ "$(ls | wc -l)" != 7 ]; then
            echo "FAILED: $variable=$n $*: left $(ls | tr '\n' ' ')"
            failed=$((failed + 1))
            rm -f out.txt*
        fi
        n=$((n + (n < 300 ? 1 : 7)))
        [ "$failed" -gt 10 ] && break
        [ "$n" -gt 9000 ] && { echo "FAILED: $*: never done"; failed=$((failed + 1)); break; }
    done
    total=$((total + tried))
    echo "$variable, $*: $tried failed in turn"
}

for variable in FAIL_ALLOCATION FAIL_WRITE; do
    try_all "$variable" sheet job.cfg -o out.txt
    try_all "$variable" sheet job.cfg --format json -o out.txt
    try_all "$variable" sheet job.cfg --explain=gross -o out.txt
    try_all "$variable" sheet job.cfg --explain=yield --format json -o out.txt
    try_all "$variable" sheet mill.cfg -o out.txt
    try_all "$variable" sheet mill.cfg --explain=PROTECT -o out.txt
    try_all "$variable" takeoff job.cfg --format csv
    try_all "$variable" price job.cfg
    try_all "$variable" takeoff job.cfg --vary "bed depth +1/4in" --prices prices.cfg
    try_all "$variable" steps --rise 49in --tread 14in --count 7 --slab 2in --format json
    try_all "$variable" mix
    try_all "$variable" mix bed/stiff-1-4 --make 3ft3
    try_all "$variable" concrete --strength 3000psi --air severe --exposure irc-severe \
        --make 8ft3 --mixer 4ft3 --prices prices.cfg
    try_all "$variable" concrete --average 3500psi --trial-water 7lb --trial-cement 14.5lb \
        --trial-stone 58.6lb --trial-sand 43.5lb --trial-unit-mass 149lb/ft3 --explain
    try_all "$variable" check job.cfg
    try_all "$variable" check job.cfg --format json
    try_all "$variable" keys mixes
    try_all "$variable" --help
    try_all "$variable" day job.cfg -o out.txt
    try_all "$variable" day mill.cfg --explain=dead
    try_all "$variable" remaining job.cfg log.csv --on-hand bed/stiff-1-4=1/4
    try_all "$variable" log job.cfg log.csv --explain
done

# A row that is added: with each call that fails, the log is as it was, or has the row.
try_log() { # VARIABLE
    local variable=$1 n=1 tried=0 status
    rm -f std.txt err.txt
    cp log.csv before.csv
    while :; do
        cp before.csv log.csv
        rm -f "$good/fired"
        env LD_PRELOAD="$shim" "$variable=$n" FIRED="$good/fired" "$program" log job.cfg log.csv add \
            --mix slurry/neat --bags 1/32 --set "1 treads" --date 2026-05-12 --time 12:00 \
            >"$good/std.txt" 2>"$good/err.txt"
        status=$?
        [ "$status" = 0 ] && [ ! -e "$good/fired" ] && break
        tried=$((tried + 1))
        if cmp -s log.csv before.csv; then
            [ "$status" = 3 ] && [ -s "$good/err.txt" ]
        else
            [ "$(head -c "$(wc -c <before.csv)" log.csv | cmp - before.csv && wc -l <log.csv)" = \
                "$(($(wc -l <before.csv) + 1))" ]
        fi
        if [ $? != 0 ]; then
            echo "FAILED: $variable=$n log add: exit status $status, $(wc -l <log.csv) lines"
            failed=$((failed + 1))
        fi
        if [ "$(ls | grep -c 'log.csv\.')" != 0 ]; then
            echo "FAILED: $variable=$n log add: left $(ls | tr '\n' ' ')"
            failed=$((failed + 1))
            rm -f log.csv.*
        fi
        n=$((n + 1))
        [ "$failed" -gt 10 ] && break
    done
    total=$((total + tried))
    echo "$variable, log add: $tried failed in turn"
}
try_log FAIL_ALLOCATION
try_log FAIL_WRITE

# Another program that saves the log while a row is being added loses nothing by it.
cp before.csv log.csv
echo >>before.csv
env LD_PRELOAD="$shim" CHANGED=log.csv "$program" log job.cfg log.csv add --mix slurry/neat --bags 1/32 \
    --set "1 treads" --date 2026-05-12 --time 12:00 >"$good/std.txt" 2>"$good/err.txt"
status=$?
if [ "$status" != 3 ] || ! cmp -s log.csv before.csv || ! grep -q 'another program' "$good/err.txt"; then
    echo "FAILED: a log that changes meanwhile: exit status $status, $(head -1 "$good/err.txt")"
    failed=$((failed + 1))
fi
echo "failing: $total calls failed in turn, $failed faults"
[ "$failed" = 0 ] && [ "$total" -gt 50 ]
