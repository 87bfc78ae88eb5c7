# Three hundred pieces, each with a count of none.
{
    printf 'format = 1;\nsite = { name = "Bandstand"; };\ncrew = { mixer = { usable = "6 ft3"; }; };\npieces = (\n'
    for i in $(seq 300); do
        [ "$i" = 1 ] || printf ',\n'
        printf '{ name = "tread %d"; kind = "tread"; count = 0; size = "5 ft x 14 in"; ' "$i"
        printf 'layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); }'
    done
    printf '\n);\n'
} >job.cfg
