printf 'format = 1;\nsite = { name = "Caf\351 steps"; };\ncrew = { mixer = { usable = "6 ft3"; }; };\n' >job.cfg
printf 'pieces = ( { name = "treads"; kind = "tread"; size = "5 ft x 14 in";\n' >>job.cfg
printf '  layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); } );\n' >>job.cfg
