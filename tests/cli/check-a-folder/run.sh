# A folder stands for the jobs in it and in its folders; prices.cfg is no job.
mkdir -p site/porch site/.hidden empty
cp "$EXAMPLES"/library-entrance/*.cfg site/porch
cp "$EXAMPLES"/boathouse-steps/job.cfg site/steps.cfg
echo "broken" >site/.hidden/job.cfg
echo "notes" >site/notes.txt
"$GAUGEBOX" check site
echo "exit $?"
echo 'format = 2;' >site/porch/a.cfg
"$GAUGEBOX" check site/ 2>&1 | sed -n 1,2p
"$GAUGEBOX" check empty
echo "exit $?"
"$GAUGEBOX" check site --format json | grep -c '"line"'
"$GAUGEBOX" check nowhere
echo "exit $?"
