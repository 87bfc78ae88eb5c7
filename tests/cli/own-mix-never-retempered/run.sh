# Whether water may be added later is handed on by `like`, and both sheets say so.
cp -r "$CASE/mine" "$CASE/broken" "$CASE/job.cfg" .
for mix in handed-on stated taken-back silent; do
    echo "-- $mix"
    "$GAUGEBOX" mix "yard/$mix" --mixes mine | sed -n '/^LIFE/,/^HOLD/p' | grep -v '^HOLD'
done
"$GAUGEBOX" sheet job.cfg --mixes mine | grep -A 1 '^MIX\|^DEAD'
"$GAUGEBOX" mix yard/yes --mixes broken
echo "exit $?"
