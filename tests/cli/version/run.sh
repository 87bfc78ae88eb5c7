"$GAUGEBOX" --version
echo "exit $?"
