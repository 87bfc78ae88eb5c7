# Crews, days, pails and paces that are none: every fault by its line, and nothing is
# printed.
good() {
    cat <<'END'
format = 1;
site = { name = "s"; };
crew = { mixer = { usable = "6 ft3"; }; pace = "3 treads/h"; start = "07:00"; finish = "15:00";
         breaks = ( { from = "10:00"; to = "10:15"; }, { from = "12:00"; to = "12:30"; } );
         mixing = "10 min"; carrying = "3 min"; load = "150 lb"; };
pail = { across_bottom = "10 in"; height = "14 in"; };
pieces = ( { name = "treads"; kind = "tread"; count = 4; size = "5 ft x 14 in";
             layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1-1/4 in"; },
                        { kind = "slurry"; mix = "slurry/neat"; } ); } );
END
}
try() { # NAME SED
    printf '== %s\n' "$1"
    good | sed -E "$2" >job.cfg
    "$GAUGEBOX" day job.cfg >out.txt
    echo "exit $?, $(wc -l <out.txt) lines"
}
try "none" ''
try "pace zero" 's/3 treads\/h/0 treads\/h/'
try "no pace" 's/ pace = "3 treads\/h";//'
try "no start" 's/ start = "07:00"; finish = "15:00";//; s/breaks = .*//; s/^ *mixing/mixing/'
try "breaks without a start" 's/ start = "07:00"; finish = "15:00";//'
try "start after the end" 's/07:00/16:00/'
try "finish at the start" 's/15:00/07:00/'
try "a break that ends before it begins" 's/10:15/09:45/'
try "a break of no time" 's/10:15/10:00/'
try "overlapping breaks" 's/12:00/10:10/'
try "a break outside of the day" 's/12:00/05:00/; s/12:30/05:30/'
try "a break over the end" 's/12:30/16:00/'
try "a break without its end" 's/ to = "12:30";//'
try "a break that is no clock" 's/"12:30"/"half past"/'
try "nothing but breaks" 's/10:00"; to = "10:15/07:00"; to = "11:50/; s/12:00"; to = "12:30/11:50"; to = "14:50/'
try "mixing longer than the life" 's/mixing = "10 min"/mixing = "1 h"/'
try "mixing shorter than the mix asks for" 's/mixing = "10 min"/mixing = "2 min"/'
try "mixing of no time" 's/mixing = "10 min"/mixing = "0 min"/'
try "mixing without a unit" 's/mixing = "10 min"/mixing = 10/'
try "carrying without a load" 's/ load = "150 lb";//'
try "a load without carrying" 's/ carrying = "3 min";//'
try "no mixer" 's/ mixer = \{ usable = "6 ft3"; \};//'
try "a mixer of no size" 's/usable = "6 ft3"/kind = "drum"/'
try "usable beyond rated" 's/usable = "6 ft3"/usable = "6 ft3"; rated = "4 ft3"/'
try "filled without rated" 's/usable = "6 ft3"/usable = "6 ft3"; filled = "50%"/'
try "filled beyond all of it" 's/usable = "6 ft3"/rated = "6 ft3"; filled = "150%"/'
try "a mixer and several" 's/mixer = (\{[^}]*\});/mixer = \1; mixers = ( \1 );/'
try "mixers without names" 's/mixer = (\{[^}]*\});/mixers = ( \1, \1 );/'
try "mixers of one name" 's/mixer = \{([^}]*)\};/mixers = ( {name = "a"; \1}, {name = "a"; \1} );/'
try "no mixer for a mix" 's/mixer = \{([^}]*)\};/mixers = ( {name = "a"; fills = [ "slab" ]; \1} );/'
try "no mixers" 's/mixer = \{([^}]*)\};/mixers = ( );/'
try "a pace stated twice" 's/ pace = "3/ paces = ( { of = [ "bed" ]; pace = "9 ft2\/h"; }, { of = [ "bed" ]; pace = "8 ft2\/h"; } ); pace = "3/'
try "treads of a slab" 's/ pace = "3/ paces = ( { of = [ "slab" ]; pace = "3 treads\/h"; } ); pace = "3/'
try "an area of a core" 's/ pace = "3/ paces = ( { of = [ "core" ]; pace = "3 ft2\/h"; } ); pace = "3/'
try "a pace of nothing" 's/ pace = "3/ paces = ( { of = [ ]; pace = "3 ft2\/h"; } ); pace = "3/'
try "hands of none" 's/load = /hands = 0; load = /'
try "a pail without height" 's/ height = "14 in";//'
try "a pail without width" 's/across_bottom = "10 in"; //'
try "a pail told twice" 's/across_bottom/volume = "5 gal"; across_bottom/'
try "a pail too large" 's/"10 in"; height = "14 in"/"40 in"; height = "40 in"/'
try "water of the site absurd" 's/^pail/site_water = { rinsing = "0 gal"; curing = "1 mi"; };\npail/'
