# U+202E turns the writing round, so that what stands behind it is read backwards.
{
    printf 'format = 1;\nsite = { name = "Bandstand \342\200\256gfc.boj"; };\n'
    printf 'crew = { mixer = { usable = "6 ft3"; }; };\npieces = (\n'
    printf ' { name = "sill\342\201\246"; kind = "landing"; size = "4 ft x 3 ft";\n'
    printf '   layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); }\n);\n'
} >job.cfg
