#!/usr/bin/env bash
# Writes gaugebox.pot anew from the marked words of the sources, or, with --print, prints
# what it would be. Nothing of the day or the machine goes into it.
set -euo pipefail
export LC_ALL=C
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
extract() { # FILE [OPTION...]
    local to=$1
    shift
    xgettext --language=C --from-code=UTF-8 --omit-header --keyword "$@" -o "$to"
}
# xgettext takes one meaning of a keyword at a time: labels first, without those that are
# empty, and then words.
mkdir -p "$work/include/gaugebox"
sed -E 's/^(GB_ROW(_PLURAL)?\(\w+, )""/\1NULL/' include/gaugebox/rows.def \
    >"$work/include/gaugebox/rows.def"
(cd "$work" && extract labels.pot --keyword=GB_ROW:2 --keyword=GB_ROW_PLURAL:2 \
    include/gaugebox/rows.def)
sed -i 's/^msgid /#. A label of the sheet: at most 10 columns.\n&/' "$work/labels.pot"
find src -name '*.[ch]' | sort >"$work/sources"
extract "$work/words.pot" --files-from="$work/sources" \
    --keyword=GB_ROW:3 --flag=GB_ROW:3:no-c-format \
    --keyword=GB_ROW_PLURAL:3,4 --flag=GB_ROW_PLURAL:3:no-c-format \
    --keyword=GB_SCHEMA:1 --flag=GB_SCHEMA:1:no-c-format --keyword=LIFE:4 \
    --keyword=N_:1 --flag=N_:1:no-c-format \
    --keyword=NF_:1 --flag=NF_:1:c-format \
    --keyword=gb_tr:1 --flag=gb_tr:1:pass-c-format \
    --keyword=gb_tr_count:1,2 --flag=gb_tr_count:1:c-format --flag=gb_tr_count:2:c-format \
    --keyword=gb_report:4 --flag=gb_report:4:c-format \
    --keyword=GB_REFUSE:2 --flag=GB_REFUSE:2:c-format \
    --keyword=REPORT:2 --flag=REPORT:2:c-format \
    --flag=gb_add_format:2:c-format --flag=argp_error:2:c-format \
    --flag=fprintf:2:c-format include/gaugebox/rows.def
{
    cat <<'EOF'
# The words of gaugebox, for translators: read terms.md first.
#
msgid ""
msgstr ""
"Project-Id-Version: gaugebox\n"
"Language: \n"
"MIME-Version: 1.0\n"
"Content-Type: text/plain; charset=UTF-8\n"
"Content-Transfer-Encoding: 8bit\n"
"Plural-Forms: nplurals=INTEGER; plural=EXPRESSION;\n"

EOF
    # A row that is a single figure says nothing that could be translated.
    msgcat --use-first --add-location=file --sort-by-file "$work/labels.pot" \
        "$work/words.pot" | msggrep --invert-match --msgid -E -e '^\{[a-z_]+\}$'
} >"$work/gaugebox.pot"
if [ "${1:-}" = --print ]; then
    cat "$work/gaugebox.pot"
else
    cp "$work/gaugebox.pot" src/po/gaugebox.pot
fi
