# ACI 211.1-91, example 1: the trial batch of its section 7.2, and the next one.
"$GAUGEBOX" concrete --average "3500 psi" --slump 3-1/2in --largest 1-1/2in \
    --fineness 2.8 --rodded "100 lb/ft3" --cement-gravity 3.15 --sand-gravity 2.64 \
    --stone-gravity 2.68 --sand-absorption 0.7% --stone-absorption 0.5% \
    --sand-moisture 6% --stone-moisture 2% --trial-water "7 lb" --trial-cement "14.52 lb" \
    --trial-stone "58.65 lb" --trial-sand "43.53 lb" --trial-unit-mass "149 lb/ft3" \
    --trial-slump 2in
# The same unit mass by a measure, and air by a meter where air is entrained.
"$GAUGEBOX" concrete --average "3000 psi" --slump 3in --air moderate \
    --trial-water "6.2 lb" --trial-cement "16 lb" --trial-stone "46 lb" \
    --trial-sand "33 lb" --trial-full "43.5 lb" --trial-empty "8.1 lb" \
    --trial-measure "0.25 ft3" --trial-slump 3-1/2in --trial-air 6% | sed -n '/The trial/,/^$/p'
