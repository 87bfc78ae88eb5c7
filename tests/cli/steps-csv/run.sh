# Every table of a layout for a spreadsheet.
"$GAUGEBOX" steps --rise 28in --tread 14in --pitch 1/8in/ft --count 4 --slab 2in --bed 1in --footing 6in --format csv
"$GAUGEBOX" steps "$EXAMPLES/terrace-steps/job.cfg" --format csv | grep -i 'lower' | sed -n '1,6p'
