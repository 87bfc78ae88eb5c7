# U+009B begins a terminal's command as escape and a bracket do.
{
    printf 'format = 1;\nsite = { name = "Band\302\23331mstand"; };\n'
    printf 'crew = { mixer = { usable = "6 ft3"; }; };\n'
    printf 'pieces = ( { name = "sill"; kind = "landing"; size = "4 ft x 3 ft";\n'
    printf '   layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); } );\n'
} >job.cfg
