# Twenty thousand groups, one in another.
{ awk 'BEGIN { printf "format = 1;\n"; for (i = 0; i < 20000; i++) printf "a = { " }'; } >job.cfg
