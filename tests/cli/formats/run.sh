# Which command writes which format; the wrong one is wrong usage, and nothing is written.
cp "$EXAMPLES"/boathouse-steps/*.cfg .
for format in text json csv yaml; do
    for command in "sheet job.cfg" "takeoff job.cfg" "price job.cfg" mix "check job.cfg" keys; do
        # shellcheck disable=SC2086
        "$GAUGEBOX" $command --format $format >out.txt 2>err.txt
        echo "$format $command: exit $?, $([ -s out.txt ] && echo output || echo nothing)"
    done
done
sed -n 1p err.txt
