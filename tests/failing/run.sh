#!/usr/bin/env bash
# Fails every allocation and every write in turn, until a run meets none. A run that met
# one must end with exit status 3 and a reason, write no sheet, and leave no file behind;
# it must never crash.
set -u
program=$(readlink -f "$1")
shim=$(readlink -f "$2")
examples=$(cd "$(dirname "$0")/../../examples" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cp "$examples"/library-entrance/*.cfg "$work"
cp "$examples"/mill-landing/job.cfg "$work/mill.cfg"
cp "$examples"/mill-landing/weather.csv "$work"
cd "$work" || exit 1
failed=0
total=0

try_all() { # VARIABLE COMMAND [ARGUMENT...]
    local variable=$1 n=1 status
    shift
    while :; do
        rm -f out.txt
        env LD_PRELOAD="$shim" "$variable=$n" "$program" "$@" >std.txt 2>err.txt
        status=$?
        [ "$status" = 0 ] && break
        if [ "$status" != 3 ] || [ ! -s err.txt ]; then
            echo "FAILED: $variable=$n $*: exit status $status, $(wc -c <err.txt) bytes told"
            failed=$((failed + 1))
        fi
        if [ -e out.txt ] || [ "$(ls | wc -l)" != 6 ]; then
            echo "FAILED: $variable=$n $*: left $(ls | tr '\n' ' ')"
            failed=$((failed + 1))
            rm -f out.txt*
        fi
        n=$((n + 1))
        [ "$failed" -gt 10 ] && break
        [ "$n" -gt 2000 ] && { echo "FAILED: $*: never done"; failed=$((failed + 1)); break; }
    done
    total=$((total + n - 1))
    echo "$variable, $*: $((n - 1)) failed in turn"
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
    try_all "$variable" check job.cfg
    try_all "$variable" check job.cfg --format json
    try_all "$variable" keys mixes
    try_all "$variable" --help
done
echo "failing: $total calls failed in turn, $failed faults"
[ "$failed" = 0 ] && [ "$total" -gt 50 ]
