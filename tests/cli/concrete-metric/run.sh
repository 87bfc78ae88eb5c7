# In metric units the metric tables are read; a plant's own tests decide the average.
"$GAUGEBOX" concrete --units metric --strength "20 MPa" --deviation "2.8 MPa" --tests 22 \
    --slump "80 mm" --largest 37.5mm --attack sulfate --resisting --cement en-cement \
    --rodded "1600 kg/m3" --placing pumped --mixer 120L
"$GAUGEBOX" concrete proportioned/footing-20mpa | sed -n 1,30p
