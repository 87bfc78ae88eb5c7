# As an editor on another system saves it: a carriage return at each line's end.
{
    printf 'format = 1;\r\nsite = { name = "Bandstand"; };\r\n'
    printf 'crew = { mixer = { usable = "6 ft3"; }; }; # the small one\r\n'
    printf 'pieces = (\r\n { name = "sill"; kind = "landing"; size = "4 ft x 3 ft";\r\n'
    printf '   layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); }\r\n);\r\n'
} >job.cfg
