head -c 20971520 /dev/zero | tr '\0' '#' >job.cfg
