chmod 000 job.cfg
