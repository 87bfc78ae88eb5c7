mkdir job.cfg
