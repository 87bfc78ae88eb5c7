#!/usr/bin/env bash
# Real processes at one batch log: several writers at once, writers that are killed, a disk
# that is full. No row is lost, none is torn, and the file is whole at any moment.
set -u
program=$(readlink -f "$1")
top=$(cd "$(dirname "$0")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work" || exit 1
failed=0
fail() {
    echo "FAILED: $*"
    failed=$((failed + 1))
}
cat >job.cfg <<'END'
format = 1;
site = { name = "s"; };
crew = { mixer = { usable = "6 ft3"; }; };
pieces = ( { name = "treads"; kind = "tread"; count = 10000; size = "5 ft x 14 in";
             layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1-1/4 in"; } ); } );
END
add() { # REMARK
    "$program" log job.cfg log.csv add --bags 1 --set "1 treads" --date 2026-05-12 \
        --time 07:30 --remark "$1"
}
whole() { # ROWS: as many, numbered on, and no fault
    "$program" log job.cfg log.csv >out.txt 2>err.txt || fail "$1: $(head -2 err.txt)"
    [ "$(($(wc -l <log.csv) - 1))" = "$2" ] || fail "$1: $(($(wc -l <log.csv) - 1)) rows, not $2"
    [ "$(tail -n +2 log.csv | cut -d, -f4 | tr '\n' ' ')" = "$(seq -s ' ' "$2") " ] ||
        fail "$1: batches are not numbered on"
    [ "$(ls | grep -c 'log.csv\.')" = "$3" ] || fail "$1: left $(ls | tr '\n' ' ')"
}

for writers in 2 8; do
    rm -f log.csv
    for ((w = 1; w <= writers; w++)); do
        (for ((i = 1; i <= 25; i++)); do add "w$w i$i" >/dev/null || echo "w$w i$i" >>refused.txt; done) &
    done
    wait
    [ ! -e refused.txt ] || fail "$writers writers: $(wc -l <refused.txt) were refused"
    whole "$writers writers" $((writers * 25)) 0
    for ((w = 1; w <= writers; w++)); do
        [ "$(grep -c ",w$w i" log.csv)" = 25 ] || fail "$writers writers: rows of writer $w"
    done
    echo "$writers writers at once: $(($(wc -l <log.csv) - 1)) rows"
done

# Killed at any moment: after each kill the log is whole, and what was told as added is in it.
# Each lives for up to three quarters of what five runs take in the mean, and for as long as
# it takes to begin to sleep.
rm -f log.csv told.txt
begun=${EPOCHREALTIME/[.,]/}
for i in 1 2 3 4 5; do add "first $i" >/dev/null; done
run_us=$(((${EPOCHREALTIME/[.,]/} - begun) / 5))
killed=0
added=0
for ((i = 1; i <= 4000 && (killed < 150 || added < 50); i++)); do
    # The program itself, not a shell that waits for it.
    "$program" log job.cfg log.csv add --bags 1 --set "1 treads" --date 2026-05-12 \
        --time 07:30 --remark "k$i" >/dev/null 2>&1 &
    victim=$!
    sleep "$(printf '0.%06d' $((RANDOM * (run_us * 3 / 4) / 32768)))"
    kill -9 "$victim" 2>/dev/null
    wait "$victim" 2>/dev/null
    status=$?
    [ "$status" = 137 ] && killed=$((killed + 1))
    if [ "$status" = 0 ]; then
        added=$((added + 1))
        echo "k$i" >>told.txt
    fi
    if [ -s log.csv ]; then
        "$program" log job.cfg log.csv >/dev/null 2>err.txt || fail "kill $i: $(head -1 err.txt)"
    fi
    rm -f log.csv.??????
done
while read -r row; do
    grep -q ",$row\$" log.csv || fail "$row was told as added and is not in the log"
done <told.txt
rows=$(($(wc -l <log.csv) - 1))
[ "$rows" -ge "$(wc -l <told.txt)" ] || fail "fewer rows than were told"
whole "after kills" "$rows" 0
if [ "$killed" -lt 150 ] || [ "$added" -lt 50 ]; then
    fail "only $killed writers were killed and $added left to add"
fi
echo "$((i - 1)) writers, $killed of them killed: $rows rows, $(wc -l <told.txt) told as added"

# A disk that is full: a limit on what a file may hold stands in for it.
cp log.csv before.csv
head -c 900 /dev/zero | tr '\0' 'x' >pad
(
    trap '' XFSZ
    ulimit -f 1 # blocks of 1024 bytes: the old text and a row are more
    for i in 1 2 3 4 5 6 7 8; do add "$(cat pad)" 2>>full.txt; done
    exit 0
) >/dev/null
if cmp -s log.csv before.csv; then
    grep -q 'cannot be written' full.txt || fail "a full disk is not told: $(head -1 full.txt)"
else
    fail "a full disk changed the log"
fi
whole "full disk" "$rows" 0
echo "a full disk: told, and the log is as before"
# A real one, where it may be mounted.
mkdir small
if mount -t tmpfs -o size=64k tmpfs small 2>/dev/null; then
    head -50 log.csv >few.csv
    cp few.csv small/log.csv
    head -c 60000 /dev/zero >small/pad 2>/dev/null
    "$program" log job.cfg small/log.csv add --bags 1 --set "1 treads" --date 2026-05-12 \
        --time 07:30 --remark "$(cat pad)" >/dev/null 2>full.txt
    status=$?
    [ "$status" = 3 ] || fail "a small disk: exit status $status"
    cmp -s few.csv small/log.csv || fail "a small disk changed the log"
    umount small
    echo "a small disk: told, and the log is as before"
else
    echo "a small disk: none may be mounted here, so that was not tried"
fi

# 100,000 rows are read, and one more is added.
{
    head -1 log.csv
    seq 1 99999 | sed 's/.*/2026-05-12,07:30,bed\/stiff-1-4,&,1,10.5,,,0.05 treads,,,C 118,61,/'
} >long.csv
"$program" log job.cfg long.csv add --bags 1 --set "0.05 treads" --date 2026-05-12 --time 07:31 \
    >/dev/null || fail "a long log takes no row"
"$program" remaining job.cfg long.csv | grep -q '^SO FAR  *100000 batches' || fail "a long log is not read"
[ "$(wc -l <long.csv)" = 100001 ] || fail "a long log has $(wc -l <long.csv) lines"
echo "a log of 100,000 batches: read, added to, reckoned with"
echo "log: $failed faults"
[ "$failed" = 0 ]
