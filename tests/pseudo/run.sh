#!/usr/bin/env bash
# The whole program in a language that no one speaks: every word of the catalog and of the
# mix table in accented signs and 40 % longer. A word that stays plain has escaped
# translation; a line that is too long, a column that does not stand, or a label that is
# cut shows a layout that only holds in English.
set -u
program=$(readlink -f "$1")
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p "$work/bin"
cp "$program" "$work/bin/gaugebox"
cd "$work" || exit 1
/usr/bin/python3 "$here/make.py" "$here/../.." "$work" &&
    /usr/bin/python3 "$here/check.py" "$here/../.." "$work"
