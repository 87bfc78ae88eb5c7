# The runs of a job; a job that has none; options beside a job; neither.
"$GAUGEBOX" steps "$EXAMPLES/terrace-steps/job.cfg" >terrace.txt; echo "exit $?"
grep -c '^RUN' terrace.txt
"$GAUGEBOX" steps "$EXAMPLES/library-entrance/job.cfg" 2>&1 | sed "s#$EXAMPLES/##"
"$GAUGEBOX" steps "$EXAMPLES/terrace-steps/job.cfg" --rise 49in; echo "exit $?"
"$GAUGEBOX" steps; echo "exit $?"
"$GAUGEBOX" steps missing.cfg; echo "exit $?"
"$GAUGEBOX" steps --rise 49in --count 7 --tread 14in --explain=riser
