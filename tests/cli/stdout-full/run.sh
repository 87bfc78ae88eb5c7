cp "$EXAMPLES"/library-entrance/*.cfg .
for arguments in "sheet JOB" "takeoff JOB" "price JOB" "check JOB" "mix" "keys" "--help" "sheet --help" "--version"; do
    echo "== $arguments"
    # shellcheck disable=SC2086
    "$GAUGEBOX" ${arguments/JOB/job.cfg} >/dev/full
    echo "exit $?"
done
