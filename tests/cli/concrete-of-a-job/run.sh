# A job's own concrete, with the pile of that job: its trial stays what it was.
cp -r "$EXAMPLES/orchard-shed" shed
"$GAUGEBOX" concrete own/frost --job shed/job.cfg | sed -n '/^The trial/,/^1 yd3/p'
"$GAUGEBOX" concrete own/frost --job shed/job.cfg --sand-moisture 3% |
    sed -n '/^NEXT/,/^1 yd3/p'
"$GAUGEBOX" concrete proportioned/steps-air --sand-moisture 2% --stone-moisture 0.5% |
    sed -n '/^in 1 yd3/,/^1 yd3/p'
"$GAUGEBOX" concrete own/thaw --job shed/job.cfg
echo "status $?"
"$GAUGEBOX" concrete --strength "3000 psi" --job shed/job.cfg 2>&1 | sed -n 1p
"$GAUGEBOX" concrete own/frost --job none.cfg
echo "status $?"
# Air that did not come, frost without air, and classes with spaces between them.
"$GAUGEBOX" concrete --strength "3500 psi" --air severe --attack frost --trial-water "6.7 lb" \
    --trial-cement "20.6 lb" --trial-stone "46.6 lb" --trial-sand "33.4 lb" \
    --trial-unit-mass "146 lb/ft3" --trial-air 2% | grep -A 4 "^NEXT\|^CAUTION"
"$GAUGEBOX" concrete --strength "2500 psi" --attack frost | grep -A 2 "^CAUTION"
"$GAUGEBOX" concrete --strength "3500 psi" --air severe --exposure "[ irc-severe, en-206-xf1 ]" |
    grep -A 5 "^exposure"
# Entrained air by hand, and units, pile, bucket and mixer of the job.
cat >barrow.cfg <<'F'
format = 1;
units = "metric";
site = { name = "Yard"; exposure = [ "irc-severe" ]; };
crew = { mixer = { kind = "barrow"; usable = "60 L"; }; };
gauge = { volume = "12 L"; };
sand = { state = "nearly dry"; };
mixes = ( { name = "step"; like = "proportioned/steps-air"; title = "STEP"; source = "own"; } );
pieces = ( { name = "slab"; kind = "other"; size = "1 m x 1 m";
             layers = ( { kind = "slab"; mix = "own/step"; depth = "100 mm"; } ); } );
F
"$GAUGEBOX" concrete own/step --job barrow.cfg
"$GAUGEBOX" sheet barrow.cfg | sed -n '/^STEP/,$p'
# A pile that, with stone as wet as its mix says, brings all of the water.
sed -i 's/state = "nearly dry"/moisture = "10%"/
    s/source = "own"/&; concrete = { strength = "20 MPa"; slump = "75 mm"; air = "severe"; table = "metric"; stone_moisture = "13%"; }/' barrow.cfg
"$GAUGEBOX" concrete own/step --job barrow.cfg
echo "status $?"
"$GAUGEBOX" sheet barrow.cfg | grep -A 1 "^STOP  "
"$GAUGEBOX" concrete own/step --job barrow.cfg --sand-moisture 3% | grep "^water to add"
# A job whose mixers are for none of it.
cat >bed.cfg <<'F'
format = 1;
site = { name = "Yard"; };
crew = { mixer = { kind = "paddle"; rated = "3 ft3"; fills = [ "bed" ]; }; };
mixes = ( { name = "step"; like = "proportioned/steps-air"; title = "STEP"; source = "own"; } );
pieces = ( { name = "slab"; kind = "other"; size = "4 ft x 3 ft";
             layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); } );
F
"$GAUGEBOX" concrete own/step --job bed.cfg --make "1 yd3"
echo "status $?"
"$GAUGEBOX" concrete own/step --job bed.cfg --make "1 yd3" --mixer 4ft3 | grep "^own/step" | head -1
