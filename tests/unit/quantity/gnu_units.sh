#!/usr/bin/env bash
# Every row of the table of units against the GNU units program (Debian package units),
# which has its factors from elsewhere. Names are mapped here; a row without a mapping is
# a failure, and so is a comparison of fewer rows than the table has.
set -u
printer=$1
export LC_ALL=C.UTF-8 UNITS_ENGLISH=US
unset UNITSFILE MYUNITSFILE UNITSLOCALMAP
# Nobody's own definitions.
HOME=$(mktemp -d)
export HOME
trap 'rm -rf "$HOME"' EXIT

command -v units >/dev/null || { echo "the program 'units' is missing"; exit 1; }

si_of() { # kind: the SI unit that the table keeps it in
    case $1 in
    length) echo m ;;
    area) echo 'm^2' ;;
    volume) echo 'm^3' ;;
    mass) echo kg ;;
    density) echo 'kg/m^3' ;;
    temp) echo tempC ;;
    duration) echo s ;;
    share | slope) echo 1 ;;
    speed) echo 'm/s' ;;
    tread_pace) echo '1/s' ;;
    area_pace) echo 'm^2/s' ;;
    volume_pace) echo 'm^3/s' ;;
    joint_rate) echo 'm/m^2' ;;
    mortar_rate) echo 'm^3/m^2' ;;
    evaporation) echo 'kg/m^2/s' ;;
    pressure) echo 'Pa' ;;
    esac
}

gnu_name() { # kind, name: what GNU units calls it; nothing for an unknown one
    case "$1:$2" in
    length:mm | length:cm | length:m) echo "$2" ;;
    length:in | length:inch | length:inches | "length:''") echo inch ;;
    length:ft | length:foot | length:feet | "length:'") echo foot ;;
    length:yd) echo yard ;;
    area:mm2 | area:cm2 | area:m2) echo "${2%2}^2" ;;
    area:in2) echo 'inch^2' ;;
    area:ft2 | 'area:sq ft') echo 'foot^2' ;;
    area:yd2) echo 'yard^2' ;;
    volume:mL | volume:ml) echo milliliter ;;
    volume:L | volume:l | volume:litre | volume:litres) echo liter ;;
    volume:liter | volume:liters) echo liter ;;
    volume:m3) echo 'm^3' ;;
    volume:in3) echo 'inch^3' ;;
    volume:ft3 | 'volume:cu ft') echo 'foot^3' ;;
    volume:yd3 | 'volume:cu yd') echo 'yard^3' ;;
    volume:gal) echo usgallon ;;
    volume:qt) echo usquart ;;
    volume:pt) echo uspint ;;
    'volume:fl oz') echo usfloz ;;
    mass:g | mass:kg) echo "$2" ;;
    mass:t | mass:tonne | mass:tonnes) echo tonne ;;
    mass:oz) echo ounce ;;
    mass:lb | mass:lbs) echo pound ;;
    'mass:short ton' | 'mass:short tons') echo shortton ;;
    joint_rate:m/m2) echo 'm/m^2' ;;
    joint_rate:ft/ft2) echo 'foot/foot^2' ;;
    mortar_rate:m3/m2) echo 'm^3/m^2' ;;
    evaporation:kg/m2/h) echo 'kg/m^2/hour' ;;
    evaporation:lb/ft2/h) echo 'pound/foot^2/hour' ;;
    pressure:N/mm2) echo 'newton/mm^2' ;;
    pressure:MPa | pressure:kPa | pressure:psi) echo "$2" ;;
    mortar_rate:ft3/ft2) echo 'foot^3/foot^2' ;;
    'mortar_rate:ft3/100 ft2') echo '0.01 foot^3/foot^2' ;;
    density:kg/m3) echo 'kg/m^3' ;;
    density:lb/ft3) echo 'pound/foot^3' ;;
    density:lb/yd3) echo 'pound/yard^3' ;;
    temp:C | temp:°C) echo tempC ;;
    temp:F | temp:°F) echo tempF ;;
    duration:s) echo second ;;
    duration:min | duration:m) echo minute ;;
    duration:h | duration:hr | duration:hour | duration:hours) echo hour ;;
    duration:d | duration:day | duration:days) echo day ;;
    share:% | slope:%) echo percent ;;
    slope:in/ft) echo 'inch/foot' ;;
    slope:mm/m) echo 'mm/m' ;;
    speed:m/s) echo 'm/s' ;;
    speed:km/h) echo 'km/hour' ;;
    speed:mph) echo 'mile/hour' ;;
    tread_pace:treads/h | tread_pace:tread/h) echo '1/hour' ;;
    area_pace:ft2/h) echo 'foot^2/hour' ;;
    area_pace:m2/h) echo 'm^2/hour' ;;
    volume_pace:ft3/h) echo 'foot^3/hour' ;;
    volume_pace:L/h) echo 'liter/hour' ;;
    volume_pace:m3/h) echo 'm^3/hour' ;;
    esac
}

# 1e-12 relative; 1e-9 of a degree for temperatures.
near() { # ours, theirs, kind
    awk -v a="$1" -v b="$2" -v kind="$3" 'BEGIN {
        d = a - b; if (d < 0) d = -d
        size = b < 0 ? -b : b
        exit !(b ~ /^-?[0-9.]+(e[-+]?[0-9]+)?$/ && d <= (kind == "temp" ? 1e-9 : 1e-12 * size))
    }'
}

check() { # kind, name, number, ours
    local gnu theirs
    gnu=$(gnu_name "$1" "$2")
    [ -n "$gnu" ] || { echo "FAILED $1 \"$2\": no name of GNU units for it"; return 1; }
    if [ "$1" = temp ]; then
        theirs=$(units -t --digits 15 "$gnu($3)" tempC)
    else
        theirs=$(units -t --digits 15 "$3 ($gnu)" "$(si_of "$1")")
    fi
    near "$4" "$theirs" "$1" && return 0
    echo "FAILED $1: $3 \"$2\" is $4, GNU units says $theirs"
    return 1
}

table=$("$printer") || { echo "$printer failed"; exit 1; }
rows=0
good=0
while IFS=$'\t' read -r kind name one hundred; do
    rows=$((rows + 1))
    check "$kind" "$name" 1 "$one" && check "$kind" "$name" 100 "$hundred" &&
        good=$((good + 1))
done <<<"$table"
echo "units: $good of $rows rows compared and the same"
[ "$rows" -ge 50 ] && [ "$good" = "$rows" ]
