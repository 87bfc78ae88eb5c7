# Changes that cannot be made; every one of a call is told, and nothing is printed.
library=$EXAMPLES/library-entrance/job.cfg
terrace=$EXAMPLES/terrace-steps/job.cfg
long=$(head -c 300 /dev/zero | tr '\0' x)
for change in "" "bed" "bed depth" "bed depth " "bed dept +1in" "bed depth +1" "bed depth +1kg" \
    "bed depth NaN" "bed depth 1e999in" "bed depth -2in" "bed depth 11ft" "beds depth +1in" \
    "joint depth 1in" "slurry depth 1in" "treads count 0" "treads count -99" \
    "treads count 1.5" "treads count 99999" "treads count 1e400" "tread count -1" \
    "cellar count 3" "bed/stiff-1-4 waste 200%" "bed/stiff-1-5 waste 5%" "gold waste 5%" \
    "mixer usable 1in" "mixer usable 0 ft3" "crew usable 3ft3" "treads rise 3ft" \
    "$long depth 1in" $'bed\x1b[31m depth 1in'; do
    "$GAUGEBOX" takeoff "$library" --vary "$change" >out.txt
    echo "exit $?, $(wc -c <out.txt) bytes"
done 2>&1
for change in "upper run count 1" "upper run count 500" "upper run rise 40ft" \
    "upper run tread 1in" "lower run rise 1ft"; do
    "$GAUGEBOX" takeoff "$terrace" --vary "$change" 2>&1
    echo "exit $?"
done
"$GAUGEBOX" takeoff "$library" --vary "bed depth 20ft" --vary "treads count 0" --vary "none"
echo "exit $?"
many=()
for i in $(seq 33); do many+=(--vary "bed depth +1/4in"); done
"$GAUGEBOX" takeoff "$library" "${many[@]}"
echo "exit $?"
# How sure is told of one takeoff, or of what is bought.
"$GAUGEBOX" takeoff "$library" --vary "bed depth +1/4in" --sure 90
echo "exit $?"
