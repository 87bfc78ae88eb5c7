# The number of a plan follows its inputs and nothing else.
number() { # COMMAND [ARGUMENT...]
    "$GAUGEBOX" "$@" | sed -nE 's/^PLAN +([0-9a-f]{8})\..*/\1/p' | sort -u
}
cp "$EXAMPLES/library-entrance/job.cfg" "$EXAMPLES/library-entrance/prices.cfg" .
first=$(number sheet job.cfg)
echo "eight figures: $(echo "$first" | grep -cE '^[0-9a-f]{8}$')"
same() {
    [ "$first" = "$2" ] && echo "$1: same" || echo "$1: another"
}
same "again" "$(number sheet job.cfg)"
same "takeoff" "$(number takeoff job.cfg)"
same "metric" "$(number sheet job.cfg --units metric)"
same "by another path" "$(number sheet ./job.cfg)"
same "another locale and zone" "$(LC_ALL=C TZ=Asia/Tokyo number sheet job.cfg)"
"$GAUGEBOX" price job.cfg | sed -nE "s/.*of plans $first\$/price: names it/p"
sed 's/1-1\/4 in/1-3\/8 in/' job.cfg >deeper.cfg
same "a deeper bed" "$(number sheet deeper.cfg)"
mkdir mine
sed 's/volume = 4;/volume = 5;/' "$(dirname "$GAUGEBOX")/../share/gaugebox/mixes/bed.cfg" >mine/bed.cfg
same "another mix" "$(number sheet job.cfg --mixes mine)"
