# Each thing that can be varied, alone and several at once.
library=$EXAMPLES/library-entrance/job.cfg
terrace=$EXAMPLES/terrace-steps/job.cfg
cp "$EXAMPLES/library-entrance/prices.cfg" prices.cfg
cp "$EXAMPLES/terrace-steps/prices.cfg" terrace-prices.cfg
vary() {
    local job=$1
    shift
    printf '== %s\n' "$*"
    "$GAUGEBOX" takeoff "$job" "$@" | tail -n +5
}
vary "$library" --vary "bed depth +1/4in"
vary "$library" --vary "landing bed depth 2 in"
vary "$library" --vary "treads count -1" --vary "bed/stiff-1-4 waste 15%" \
    --prices prices.cfg
vary "$library" --vary "masonry-sand waste +5%"
vary "$library" --vary "mixer usable 3 ft3"
vary "$terrace" --vary "upper run count -1" --prices terrace-prices.cfg
vary "$terrace" --vary "upper run rise +2in" --vary "lower run tread 15in"
vary "$terrace" --vary "base depth +2in"
vary "$EXAMPLES/boathouse-steps/job.cfg" --vary "treads bed depth -5mm"
cp "$library" .
"$GAUGEBOX" takeoff job.cfg --vary "bed depth +1/4in" --explain=CHANGE_LAYER.after
