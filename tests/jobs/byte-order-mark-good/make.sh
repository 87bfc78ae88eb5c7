# As some editors save UTF-8: three bytes of mark before the text.
{
    printf '\357\273\277format = 1;\nsite = { name = "Bandstand"; };\n'
    printf 'crew = { mixer = { usable = "6 ft3"; }; };\n'
    printf 'pieces = ( { name = "sill"; kind = "landing"; size = "4 ft x 3 ft";\n'
    printf '   layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); } );\n'
} >job.cfg
