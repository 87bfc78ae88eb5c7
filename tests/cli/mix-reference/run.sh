# What stands below the gauge part, in both kinds of units: a site mix with lime, a slurry,
# concrete gauged by the litre, a blend, and a mix that fills cores alone.
reference() {
    "$GAUGEBOX" mix "$@" | sed -n '/^For reference/,$p'
    echo "exit ${PIPESTATUS[0]}"
}
for units in us metric; do
    reference mortar/type-s --units "$units"
    reference slurry/neat --units "$units"
    reference st-concrete/st1 --units "$units"
    reference bagged/mortar-80lb --units "$units"
    reference grout/fine --units "$units"
done
