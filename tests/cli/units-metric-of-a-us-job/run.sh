"$GAUGEBOX" sheet --units metric "$EXAMPLES/library-entrance/job.cfg" | grep -e NEED -e "one standard"
