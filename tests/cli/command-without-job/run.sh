for command in sheet takeoff price check; do
    "$GAUGEBOX" "$command"
    echo "exit $?"
done
