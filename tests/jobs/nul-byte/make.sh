printf 'format = 1;\nsite = { name = "Bandstand\000"; };\n' >job.cfg
