#!/usr/bin/env bash
# Whole-program cases. One folder each: run.sh is run in an empty folder with $GAUGEBOX
# (the program) and $CASE (its own folder) set; what it prints, stderr included, must be
# expected.txt. UPDATE=1 writes what came instead of comparing; read it before you commit.
set -u
GAUGEBOX=$(readlink -f "$1")
export GAUGEBOX
here=$(cd "$(dirname "$0")" && pwd)
EXAMPLES=$(cd "$here/../../examples" && pwd)
export EXAMPLES
only=${2:-}
passed=0
failed=0
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
# No case depends on what the one who runs it keeps at home.
export XDG_DATA_HOME=$work/none
for folder in "$here"/*/; do
    CASE=${folder%/}
    export CASE
    name=$(basename "$CASE")
    [ -z "$only" ] || [ "$name" = "$only" ] || continue
    rm -rf "$work/empty"
    mkdir "$work/empty"
    cd "$work/empty" || exit 1
    bash "$CASE/run.sh" >"$work/out.txt" 2>&1
    cd "$here" || exit 1
    # A plan's number changes with every word of the mix table.
    sed -E -i 's/^(PLAN|LIST)( +)[0-9a-f]{8}(, of plans [0-9a-f, ]+)?/\1\2--------/
        s/^(PLAN.* now, )[0-9a-f]{8} before/\1-------- before/' "$work/out.txt"
    [ "${UPDATE:-0}" = 1 ] && cp "$work/out.txt" "$CASE/expected.txt"
    if diff -u "$CASE/expected.txt" "$work/out.txt"; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        echo "FAILED $name"
    fi
done
echo "cli: $passed passed, $failed failed"
[ "$failed" = 0 ] && [ "$passed" -gt 0 ]
