"$GAUGEBOX" sheet --units us "$EXAMPLES/boathouse-steps/job.cfg" | grep NEED
