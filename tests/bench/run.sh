#!/usr/bin/env bash
# Prints measurements; passes no judgement.
set -euo pipefail
program=$1
runner=$2
parse_only=$3
csv_only=$4
hours=$5
log=$6
top=$(cd "$(dirname "$0")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
demo=$top/examples/library-entrance/job.cfg

echo "text sheet of the demo (A) against parsing the same files with libconfig alone (B)"
"$runner" 300 "$program" sheet "$demo" -- \
    "$parse_only" "$demo" "$top"/mixes/{materials,bed,slurry}.cfg

echo "the demo's sheet as JSON (A) against text (B)"
"$runner" 300 "$program" sheet "$demo" --format json -- "$program" sheet "$demo"

echo "the whole mix table (A) against parsing its files with libconfig alone (B)"
"$runner" 200 "$program" mix -- "$parse_only" "$top"/mixes/*.cfg

echo "one family (A) against the whole mix table (B)"
"$runner" 200 "$program" mix bed -- "$program" mix

echo "one mix with its reference (A) against its family's list (B)"
"$runner" 200 "$program" mix bed/stiff-1-4 -- "$program" mix bed

# A year of hours, which `seq` and awk make up.
seq 0 8759 | awk 'BEGIN { print "time,air_f,humidity_pct,wind_mph,rain_in" } {
    t = 1767225600 + $1 * 3600
    printf "%s,%.1f,%d,%.1f,%.2f\n", strftime("%Y-%m-%dT%H:%M", t, 1),
        50 + 30 * sin($1 / 1391) + 10 * sin($1 / 3.82), 40 + $1 % 50, $1 % 23 / 1.7, 0
}' >"$work/hours.csv"
echo "a year of hours (A) against reading the file with libcsv alone (B)"
"$runner" 100 "$hours" "$work/hours.csv" -- "$csv_only" "$work/hours.csv"

# A log of 100,000 batches, a day of them after the other.
seq 0 99999 | awk 'BEGIN { print "date,time,mix,batch,bags,water_qt,start,stop,set,depth_in,thrown_pct,lot,air_f,remark" } {
    t = 1767225600 + int($1 / 20) * 86400 + ($1 % 20) * 1500 + 25200
    printf "%s,%s,bed/stiff-1-4,%d,1,%.1f,%s,%s,0.00006 treads,,%d,C 118,%d,\n", strftime("%Y-%m-%d", t, 1),
        strftime("%H:%M", t, 1), $1 + 1, 9 + $1 % 4 / 2, strftime("%H:%M", t + 600, 1),
        strftime("%H:%M", t + 3600, 1), $1 % 5, 50 + $1 % 30
}' >"$work/log.csv"
echo "a log of 100,000 batches (A) against reading the file with libcsv alone (B)"
"$runner" 20 "$log" "$top/mixes" "$demo" "$work/log.csv" -- "$csv_only" "$work/log.csv"

mkdir "$work/jobs"
for i in $(seq 1000); do
    sed "s/Town library/Town library $i/" "$demo" >"$work/jobs/$i.cfg"
done
echo "check of 1000 jobs in one go (A) against parsing them with libconfig alone (B)"
"$runner" 10 "$program" check "$work/jobs" -- \
    "$parse_only" "$work"/jobs/*.cfg "$top"/mixes/{materials,bed,slurry}.cfg

# A job of N landings of slightly different sizes, each bedded and coated.
job() {
    sed '/^pieces/,$d' "$demo" | sed 's/^  pace = .*/  pace = "40 ft2\/h";/'
    echo 'pieces = ('
    for ((i = 1; i <= $1; i++)); do
        [ "$i" = 1 ] || echo ','
        cat <<EOF
  { name = "landing $i"; kind = "landing"; size = "5 ft x $((i % 9 + 2)) ft";
    layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1-1/4 in"; },
               { kind = "slurry"; mix = "slurry/neat"; depth = "1/16 in"; } ); }
EOF
    done
    echo ');'
}
for n in 1250 2500 5000 10000; do
    job "$n" >"$work/$n.cfg"
    for command in check sheet day; do
        echo "$command of $n pieces (A) against parsing them with libconfig alone (B)"
        "$runner" 5 "$program" "$command" "$work/$n.cfg" -- \
            "$parse_only" "$work/$n.cfg" "$top"/mixes/{materials,bed,slurry}.cfg
    done
done
