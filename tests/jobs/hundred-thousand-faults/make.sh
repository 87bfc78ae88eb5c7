# A hundred thousand pieces, each with two faults: the first are told, the others counted.
{
    printf 'format = 1;\nsite = { name = "Bandstand"; };\ncrew = { mixer = { usable = "6 ft3"; }; };\npieces = (\n'
    awk 'BEGIN {
        for (i = 1; i <= 100000; i++)
            printf "%s{ name = \"t\"; kind = \"tread\"; count = 0; layers = ( { kind = \"core\"; mix = \"grout/fine\"; volume = \"1\"; } ); }", (i > 1 ? ",\n" : "")
    }'
    printf '\n);\n'
} >job.cfg
