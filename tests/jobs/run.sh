#!/usr/bin/env bash
# One folder per job. A folder holds job.cfg, or make.sh that makes it (for files that no
# one wants in a repository), and what is expected:
#   faults.txt   `check job.cfg` writes exactly this on stderr; the exit status is 1, or
#                what the file `status` says
#   sheet.txt, takeoff.txt, price.txt   what that command prints; the exit status is 0
# UPDATE=1 writes what came instead of comparing. Read it before you commit it.
set -u
program=$(readlink -f "$1")
here=$(cd "$(dirname "$0")" && pwd)
only=${2:-}
passed=0
failed=0
work=$(mktemp -d)
trap 'chmod -R u+rwX "$work"; rm -rf "$work"' EXIT

compare() { # case, expected file, actual file
    # A plan's number changes with every word of the mix table; tests/cli looks at it.
    sed -E -i 's/^(PLAN|LIST)( +)[0-9a-f]{8}(, of plans [0-9a-f, ]+)?/\1\2--------/' "$3"
    if [ "${UPDATE:-0}" = 1 ]; then
        cp "$3" "$2"
    fi
    if diff -u "$2" "$3" >"$work/diff"; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        echo "FAILED $1: $(basename "$2")"
        cat "$work/diff"
    fi
}

run_case() { # folder
    local name status wanted
    name=$(basename "$1")
    rm -rf "$work/case"
    cp -r "$1" "$work/case"
    cd "$work/case" || exit 1
    [ -f make.sh ] && bash ./make.sh
    if [ -f "$1/faults.txt" ]; then
        wanted=1
        [ -f "$1/status" ] && wanted=$(cat "$1/status")
        runner=()
        # root reads everything; an unreadable file needs a user who may not.
        if [ -f as-nobody ] && [ "$(id -u)" = 0 ]; then
            chmod 755 "$work" "$work/case"
            runner=(setpriv --reuid 65534 --regid 65534 --clear-groups)
        fi
        "${runner[@]}" "$program" check job.cfg >out.txt 2>err.txt
        status=$?
        [ -s out.txt ] && echo "(something was written to standard output)" >>err.txt
        [ "$status" = "$wanted" ] || echo "(exit status $status, not $wanted)" >>err.txt
        compare "$name" "$1/faults.txt" err.txt
    fi
    for command in sheet takeoff price; do
        [ -f "$1/$command.txt" ] || continue
        "$program" "$command" job.cfg >out.txt 2>err.txt
        status=$?
        [ "$status" = 0 ] || { echo "(exit status $status)"; cat err.txt; } >>out.txt
        compare "$name" "$1/$command.txt" out.txt
    done
    cd "$here" || exit 1
}

for folder in "$here"/*/; do
    folder=${folder%/}
    [ -z "$only" ] || [ "$(basename "$folder")" = "$only" ] || continue
    if ! ls "$folder" | grep -qxE '(faults|sheet|takeoff|price)\.txt'; then
        echo "FAILED $(basename "$folder"): expects nothing"
        failed=$((failed + 1))
        continue
    fi
    run_case "$folder"
done
echo "jobs: $passed passed, $failed failed"
[ "$failed" = 0 ] && [ "$passed" -gt 0 ]
