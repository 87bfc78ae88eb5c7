# A terminal's escape sign in three texts: none may reach the screen.
printf 'format = 1;\nsite = { name = "Bandstand"; };\ncrew = { mixer = { usable = "6 ft3"; }; pace = "\033[5m3 treads/h"; };\n' >job.cfg
printf 'pieces = ( { name = "\033[2Jtreads"; kind = "tread"; overhang = "12 in"; size = "5 ft x 11 in";\n' >>job.cfg
printf '  layers = ( { kind = "bed"; mix = "bed/\033[31mred"; depth = "1 in"; } ); } );\n' >>job.cfg
