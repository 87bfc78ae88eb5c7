# Powders are dry mass; a dose is too small to count, and what replaces water is water.
cp -r "$CASE/mine" .
for units in us metric; do
    for mix in buff half-latex; do
        "$GAUGEBOX" mix "yard/$mix" --mixes mine --units "$units" | sed -n '/^For reference/,/^COVERAGE/p'
    done
done
"$GAUGEBOX" mix yard/buff --mixes mine --explain=POWDER_LINE | sed -E "s/(mixes\/[a-z]+.cfg):[0-9]+/\1:--/"
