#!/usr/bin/env bash
# Every figure of every example and of every good job is recomputed from its own
# explanation; explain.py says what is checked.
set -u
program=$(readlink -f "$1")
here=$(cd "$(dirname "$0")" && pwd)
top=$(cd "$here/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$top" || exit 1
n=0
explain() { # COMMAND [ARGUMENT...]
    n=$((n + 1))
    printf '%s\n' "$@" >"$work/$n.options"
    "$program" "$@" --format json >"$work/$n.sheet.json" 2>"$work/err.txt" &&
        "$program" "$@" --explain --format json >"$work/$n.why.json" 2>>"$work/err.txt" &&
        "$program" "$@" --explain >"$work/$n.why.txt" 2>>"$work/err.txt" && return
    echo "FAILED: $*"
    cat "$work/err.txt"
    touch "$work/failed"
    rm -f "$work/$n".*
}
for job in examples/*/job.cfg; do
    for units in us metric; do
        for command in sheet day takeoff price; do
            explain "$command" "$job" --units "$units"
        done
    done
done
terrace=examples/terrace-steps
library=examples/library-entrance
explain takeoff $terrace/job.cfg --against $library/job.cfg
explain takeoff $library/job.cfg --against $terrace/job.cfg --units metric
explain takeoff examples/rose-garden/job.cfg --against examples/boathouse-steps/job.cfg
explain takeoff $library/job.cfg --vary "bed depth +1/4in" --prices $library/prices.cfg
explain takeoff $library/job.cfg --vary "bed/stiff-1-4 waste 15%" --vary "treads count -1"
explain takeoff $terrace/job.cfg --vary "upper run count -1" --prices $terrace/prices.cfg
explain takeoff $terrace/job.cfg --vary "lower run rise +1in" --vary "base depth +2in"
explain steps examples/terrace-steps/job.cfg
explain steps examples/terrace-steps/job.cfg --units metric
explain steps --rise 49in --tread 14in --pitch 1/4in/ft
explain steps --rise 49in --tread 14in --pitch 1/4in/ft --slab 2in --course 4in
explain steps --rise 49in --tread 14in --pitch 1/4in/ft --slab 2in --course 6in --footing 8in --count 7
explain steps --rise 1.2m --length 3m --units metric --slab 40mm --build treads --course 110mm
explain steps --rise 44in --length 100in --count 7 --face 6in --upper tread --top sill --sill 1in
explain steps --rise 30in --tread 14in --build solid --stone 7in --overlap 2in --laser 5ft --base 6in
explain steps --rise 14ft --tread 14in --count 24 --landing 4ft --top sill
explain steps --rise 5in --tread 3ft
explain takeoff $library/job.cfg --sure 95
explain price $library/job.cfg --sure 99
explain price examples/rose-garden/job.cfg --prices $library/prices.cfg --sure 99
explain log $library/job.cfg $library/log.csv
explain remaining $library/job.cfg $library/log.csv --on-hand bed/stiff-1-4=1 --lead 2
explain remaining $library/job.cfg $library/log.csv --on-hand bed/stiff-1-4=1/8 --sure 99
explain remaining $library/job.cfg $library/log.csv --units metric
explain price examples/*/job.cfg --prices examples/library-entrance/prices.cfg
for folder in tests/jobs/*-good/; do
    job=$folder/job.cfg
    if [ -f "$folder/make.sh" ]; then
        (cd "$work" && bash "$top/$folder/make.sh" >/dev/null 2>&1)
        [ -f "$work/job.cfg" ] || continue
        mv "$work/job.cfg" "$work/$n.cfg"
        job=$work/$n.cfg
    fi
    explain sheet "$job"
    explain takeoff "$job" --units metric
    ! grep -qE '\brun = ' "$job" || explain steps "$job"
    [ ! -f "$folder/prices.cfg" ] || explain price "$job"
done
for mix in $("$program" mix | grep -oE '^[a-z0-9-]+/[a-z0-9-]+'); do
    explain mix "$mix"
    explain mix "$mix" --make 2ft3 --waste 10%
    explain mix "$mix" --bags 2-1/2 --units metric
done
for mix in $("$program" mix proportioned | grep -oE '^[a-z0-9-]+/[a-z0-9-]+'); do
    explain concrete "$mix"
    explain concrete "$mix" --units metric --mixer 150L
done
trial=(--trial-water 20lb --trial-cement 50lb --trial-stone 150lb --trial-sand 110lb)
explain concrete --strength 3000psi
# Classes of exposure, and the ways side by side, with prices and without.
explain concrete --strength 3000psi --air severe --exposure irc-severe,aci-318-f2,en-206-xf4
explain concrete --strength 20MPa --table metric --exposure aci-332-rf3,aci-318-f0 --units metric
explain concrete --average 3500psi --exposure irc-negligible --slump 6in
explain concrete proportioned/footing --make 27ft3 --waste 8% --mixer 4ft3 \
    --prices examples/orchard-shed/prices.cfg
explain concrete --strength 3000psi --sand-moisture 6% --stone-moisture 2% --make 0.2m3 \
    --mixer 0.8ft3 --units metric
explain concrete proportioned/footing-20mpa --make 800L --mixer 110L
explain concrete --strength 20MPa --slump 75mm --largest 19mm --units metric
explain concrete --average 4000psi --slump 6in --largest 3/8in --air-content 2% --placing paved --mixer 2ft3
explain concrete --ratio 0.45 --water 320lb/yd3 --shape subangular --attack "frost thin" --air moderate
explain concrete --strength 2800psi --deviation 400psi --tests 22 --slump 4in --air mild \
    --attack sulfate --resisting --shape rounded --placing pumped --sand-moisture 6% \
    --stone-moisture 1% "${trial[@]}" --trial-full 54lb --trial-empty 18.4lb \
    --trial-measure 0.25ft3 --trial-slump 2in --trial-air 5%
explain concrete --strength 36MPa --deviation 2MPa --tests 40 --slump 50mm --largest 25mm \
    --units metric --attack "sulfate thin"
explain concrete --strength 5200psi --deviation 300psi --tests 15 --largest 3in --fineness 2.4
explain concrete --strength 17MPa --slump 80mm --largest 37.5mm --units metric --table metric \
    --shape "some crushed" --trial-water 9kg --trial-cement 22kg --trial-stone 68kg \
    --trial-sand 50kg --trial-unit-mass 2350kg/m3 --trial-slump 100mm
explain concrete --average 30MPa --units us --table metric --stone-gravity 2.7 --sand-gravity 2.6 \
    --cement-gravity 3.1 --sand-moisture 0.5% --air-dry "${trial[@]}" --trial-unit-mass 145lb/ft3
for mix in yard/buff yard/half-latex; do
    explain mix "$mix" --mixes tests/cli/mix-reference-additions/mine
    explain mix "$mix" --mixes tests/cli/mix-reference-additions/mine --units metric
done
claims=tests/cli/own-mix-claims-several/mine
for mix in $(sed -n 's/.*{ name = "\([^"]*\)".*/yard\/\1/p' $claims/yard.cfg); do
    explain mix "$mix" --mixes $claims
done
for kind in job mixes materials prices; do
    "$program" keys "$kind" >"$work/$kind.keys"
done
/usr/bin/python3 "$here/explain.py" "$work" "$top/mixes" || touch "$work/failed"
[ ! -e "$work/failed" ]
