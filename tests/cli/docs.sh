#!/usr/bin/env bash
# Every command that README.md and DEVELOPERS.md show with its output is run: in a fenced
# block, a line that begins with "$ gaugebox" is a command, and what follows up to the
# next one or the end of the block is what it must print. The keys that the README names
# must exist, and both commands it gives must be there.
set -u
program=$(readlink -f "$1")
top=$(cd "$(dirname "$0")/../.." && pwd)
PATH=$(dirname "$program"):$PATH
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$top" || exit 1
passed=0
failed=0

check() { # command, file with the shown output
    bash -c "$1" >"$work/real" 2>&1
    # A plan's number changes with every word of the mix table.
    sed -E -i 's/^(PLAN|LIST)( +)[0-9a-f]{8}(, of plans [0-9a-f, ]+)?/\1\2--------/' "$2" "$work/real"
    if diff -u "$2" "$work/real" >"$work/diff"; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        echo "FAILED: $1"
        cat "$work/diff"
    fi
}

for page in README.md DEVELOPERS.md; do
    command=
    inside=0
    while IFS= read -r line || [ -n "$line" ]; do
        case $line in
        '```'*)
            [ -n "$command" ] && check "$command" "$work/shown"
            command=
            inside=$((1 - inside))
            ;;
        '$ gaugebox'*)
            [ "$inside" = 1 ] || continue
            [ -n "$command" ] && check "$command" "$work/shown"
            command=${line#\$ }
            : >"$work/shown"
            ;;
        *)
            [ -n "$command" ] && printf '%s\n' "$line" >>"$work/shown"
            ;;
        esac
    done <"$page"
done

for script in examples/run tests/run; do
    if [ -x "$script" ] && grep -qF "./$script" README.md; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        echo "FAILED: README.md does not give ./$script, or it cannot be run"
    fi
done
echo "docs: $passed passed, $failed failed"
[ "$failed" = 0 ] && [ "$passed" -gt 2 ]
