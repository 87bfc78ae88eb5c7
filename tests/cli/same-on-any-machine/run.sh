cp "$EXAMPLES"/library-entrance/*.cfg .
for command in "sheet JOB" "takeoff JOB" "price JOB" "mix" "mix bed/stiff-1-4 --make 3ft3"; do
    line=${command/JOB/job.cfg}
    # shellcheck disable=SC2086
    LC_ALL=C TZ=UTC "$GAUGEBOX" $line >first.txt
    # shellcheck disable=SC2086
    LC_ALL=C.UTF-8 TZ=Asia/Kathmandu LANGUAGE=es "$GAUGEBOX" $line >second.txt
    [ -s first.txt ] && cmp first.txt second.txt && echo "same: $command"
done
