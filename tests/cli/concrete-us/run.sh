# A concrete for frost, by options: step by step, on every basis, one batch of the mixer.
"$GAUGEBOX" concrete --strength "3500 psi" --air severe --attack frost --slump 4in \
    --largest 1in --shape "some crushed" --fineness 2.7 --rodded "102 lb/ft3" \
    --sand-moisture 6% --stone-moisture 2% --mixer 4ft3
