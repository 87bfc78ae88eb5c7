# A CSV file says the same with its cells in quotes, all of them or some, with blanks and
# line ends of another machine, and with the mark of UTF-8 before it.
every='s/,/","/g; s/^/"/; s/$/"/'
mark=$'\xef\xbb\xbf'
write() { # FORM FILE
    case $1 in
    plain) cat "$2" ;;
    quoted) sed "$every" "$2" ;;
    "first row") sed "1{$every}" "$2" ;;
    "last row") sed "\${$every}" "$2" ;;
    "every other row") sed "n;$every" "$2" ;;
    "carriage returns") sed 's/$/\r/' "$2" ;;
    "quoted, carriage returns") sed "$every;s/\$/\r/" "$2" ;;
    "marked, quoted") printf %s "$mark" && sed "$every" "$2" ;;
    marked) printf %s "$mark" && cat "$2" ;;
    "no end of the last line") head -c -1 "$2" ;;
    "quoted, no end of the last line") sed "$every" "$2" | head -c -1 ;;
    "empty lines at the end") cat "$2" && printf '\n\n' ;;
    esac
}
forms=(plain quoted "first row" "last row" "every other row" "carriage returns"
    "quoted, carriage returns" "marked, quoted" marked "no end of the last line"
    "quoted, no end of the last line" "empty lines at the end")
cp "$EXAMPLES"/library-entrance/job.cfg library.cfg
cp "$EXAMPLES"/mill-landing/job.cfg mill.cfg
# The plan's number tells one file of weather from another.
look() { # COMMAND...
    "$GAUGEBOX" "$@" --format json 2>faults.txt | sed -E 's/"[0-9a-f]{8}"/""/' >now.json
    echo "${PIPESTATUS[0]}" >>faults.txt
    [ -e "$1.json" ] || cp now.json "$1.json"
    if [ -s now.json ] && cmp -s now.json "$1.json"; then
        echo "$1: the same"
    else
        echo "$1: $(cat faults.txt)"
    fi
}
for form in "${forms[@]}"; do
    echo "== $form"
    write "$form" "$EXAMPLES/library-entrance/log.csv" >log.csv
    write "$form" "$EXAMPLES/mill-landing/weather.csv" >weather.csv
    look log library.cfg log.csv
    look sheet mill.cfg
done
