# The starter is a job without faults, sheets come of it, and so is each of its commented
# lines; it names every key that must be there.
"$GAUGEBOX" starter -o job.cfg
echo "exit $?"
"$GAUGEBOX" check job.cfg
"$GAUGEBOX" sheet job.cfg >sheet.txt && echo "sheet: exit $?"
for key in $("$GAUGEBOX" keys job | sed -nE 's/^ *([a-z_]+)  \(required\)$/\1/p' | sort -u); do
    # of and share stand in lists that may be left out; bag and yield in a label
    grep -qE "\b$key\b" job.cfg || echo "not in it: $key"
done
# Each comment that is a setting becomes one.
grep -cE '^ *# [a-z_]+ = .*;' job.cfg
sed -E 's/# ([a-z_]+ = .*;)/\1/' job.cfg >all.cfg
sed -i 's/mix = "bagged\/setting-80lb"; bag/mix = "bed\/stiff-1-4"; bag/; s/bag = "80 lb"; yield = "0.66 ft3"/bag = "94 lb"; yield = "3.3 ft3"/' all.cfg
"$GAUGEBOX" check all.cfg
"$GAUGEBOX" starter more >/dev/null 2>&1
echo "with an argument: exit $?"
