#!/usr/bin/env bash
# Every output of every example, in JSON, must be valid by the installed schema; an
# independent validator (Debian's python3-jsonschema) says so. The rows that the schema
# lists must be those of rows.def, and a broken output must be refused.
set -u
program=$(readlink -f "$1")
top=$(cd "$(dirname "$0")/../.." && pwd)
schema=$top/src/write/gaugebox.schema.json
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work" || exit 1
n=0
make_json() { # EXIT COMMAND [ARGUMENT...]
    local wanted=$1
    shift
    n=$((n + 1))
    "$program" "$@" --format json >"$work/$n.json" 2>"$work/err.txt"
    local status=$?
    [ "$status" = "$wanted" ] && return
    echo "FAILED: exit status $status, not $wanted: $*"
    cat "$work/err.txt"
    touch "$work/failed"
}
for job in "$top"/examples/*/job.cfg; do
    for units in us metric; do
        for command in sheet day takeoff price check; do
            make_json 0 "$command" "$job" --units "$units"
        done
        for command in sheet day takeoff price; do
            make_json 0 "$command" "$job" --units "$units" --explain
        done
    done
done
for job in "$top"/tests/jobs/*-good/job.cfg; do
    make_json 0 sheet "$job"
    make_json 0 takeoff "$job"
    make_json 0 sheet "$job" --explain
done
for job in "$top"/examples/*/job.cfg "$top"/tests/jobs/*-good/job.cfg; do
    grep -qE '\brun = ' "$job" || continue
    make_json 0 steps "$job"
    make_json 0 steps "$job" --units metric --explain
done
library=$top/examples/library-entrance/job.cfg
terrace=$top/examples/terrace-steps
for more in "" --explain; do
    make_json 0 log "$library" "${library%job.cfg}log.csv" $more
    make_json 0 remaining "$library" "${library%job.cfg}log.csv" --on-hand bed/stiff-1-4=1/4 $more
    make_json 0 takeoff "$library" --sure 95 $more
    make_json 0 takeoff "$terrace/job.cfg" --against "$library" $more
    make_json 0 takeoff "$library" --vary "bed depth +1/4in" --units metric $more
    make_json 0 takeoff "$terrace/job.cfg" --vary "upper run count -1" --prices "$terrace/prices.cfg" $more
    make_json 0 takeoff "$library" --against "$library" $more
done
make_json 0 steps --rise 49in --tread 14in --pitch 1/4in/ft
make_json 0 steps --rise 1.2m --length 3m --units metric --explain
make_json 0 steps --rise 49in --tread 14in --slab 2in --course 4in
make_json 0 steps --rise 30in --tread 14in --build solid --stone 7in --overlap 2in --laser 5ft
for mix in $("$program" mix proportioned | grep -oE '^[a-z0-9-]+/[a-z0-9-]+'); do
    make_json 0 concrete "$mix"
    make_json 0 concrete "$mix" --units metric --mixer 150L --explain
done
trial=(--trial-water 20lb --trial-cement 50lb --trial-stone 150lb --trial-sand 110lb --trial-unit-mass 142lb/ft3)
for more in "" --explain; do
    make_json 0 concrete --strength 2800psi --deviation 400psi --tests 22 --air mild --attack frost \
        --shape rounded "${trial[@]}" --trial-slump 2in --trial-air 5% $more
    make_json 0 concrete --average 30MPa --units metric "${trial[@]}" $more
    make_json 0 concrete --strength 3000psi --exposure irc-severe,en-206-xf4 $more
    make_json 0 concrete --strength 3000psi --make 27ft3 --mixer 4ft3 --waste 5% \
        --prices "$top/examples/orchard-shed/prices.cfg" $more
    make_json 0 concrete --ratio 0.45 --water 320lb/yd3 --air-content 1% $more
done
make_json 0 mix
make_json 0 mix bed
make_json 0 mix yard/buff --mixes "$top/tests/cli/mix-reference-additions/mine"
make_json 0 mix --for pointing
make_json 0 mix mortar --for core
for mix in $("$program" mix | grep -oE '^[a-z0-9-]+/[a-z0-9-]+'); do
    make_json 0 mix "$mix"
    make_json 0 mix "$mix" --make 2ft3 --waste 10%
    make_json 0 mix "$mix" --units metric
done
claims=$top/tests/cli/own-mix-claims-several/mine
for mix in $(sed -n 's/.*{ name = "\([^"]*\)".*/yard\/\1/p' "$claims/yard.cfg"); do
    make_json 0 mix "$mix" --mixes "$claims"
done
make_json 1 check "$top"/tests/jobs/five-faults-sorted/job.cfg "$top"/examples/library-entrance/job.cfg
make_json 3 check nowhere.cfg
/usr/bin/python3 - "$schema" "$top/include/gaugebox/rows.def" "$work" <<'EOF' || touch "$work/failed"
import glob, json, re, sys
import jsonschema
schema = json.load(open(sys.argv[1]))
jsonschema.Draft7Validator.check_schema(schema)
validator = jsonschema.Draft7Validator(schema)
rows = re.findall(r"^GB_ROW(?:_PLURAL)?\((\w+),", open(sys.argv[2]).read(), re.M)
bad = 0
if schema["definitions"]["row"]["properties"]["row"]["enum"] != rows:
    print("the schema lists other rows than rows.def")
    bad += 1
files = sorted(glob.glob(sys.argv[3] + "/*.json"))
for name in files:
    for error in list(validator.iter_errors(json.load(open(name))))[:3]:
        print(name, "/".join(map(str, error.path)), error.message[:200])
        bad += 1
broken = json.load(open(files[0]))
broken["blocks"][0]["rows"][0]["net_m3"] = "much"
if validator.is_valid(broken):
    print("a text for a volume is taken as valid")
    bad += 1
print(len(files), "outputs validated")
sys.exit(bad > 0 or len(files) < 40)
EOF
[ ! -e "$work/failed" ]
