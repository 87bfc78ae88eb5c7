# Columns by their names: others' names for them, units, and what is none.
cat >job.cfg <<'END'
format = 1;
site = { name = "s"; };
crew = { mixer = { usable = "6 ft3"; }; start = "07:00"; };
weather = { hours = "weather.csv"; utc_offset = "+01:00"; day = "2026-05-12"; };
pieces = ( { name = "landing"; kind = "landing"; size = "5 ft x 6 ft";
             layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1-1/2 in"; } ); } );
END
try() { # HEAD CELLS
    printf '== %s\n' "$1"
    {
        echo "$1"
        for day in 12 13 14 15; do
            for hour in 00 01 02 03 04 05 06 07 08 09 10 11 12 13 14 15 16 17 18 19 20 21 22 23; do
                echo "2026-05-$day $hour:00$2"
            done
        done
    } >weather.csv
    "$GAUGEBOX" sheet job.cfg 2>faults.txt | grep -A3 '^TODAY'
    sed -n 1,4p faults.txt
}
try 'time,air_c' ,12
try 'Time,Temperature (°C),RH (%),Wind speed (m/s),Precip (mm)' ,12,55,3,0
try 'timestamp,TEMP_F,dew point [F],wind-kmh,x_comment' ,60,50,18,dry
try 'valid_time,dry_bulb_degc,wind_at_work_kt' ,12,6
try 'date time,air temp fahrenheit,relative humidity percent,windspeed knots' ,60,55,6
try 'time,air' ,12
try 'time,air_k' ,285
try 'time,air_c,pressure' ,12,1013
try 'time,air_c,humidty_pct' ,12,55
try 'time,air_c,temp_f' ,12,54
try 'time,air_c,humidity_pct,dew_point_c' ,12,55,3
try 'time,air_c,wind_mps,wind_at_work_mps' ,12,3,2
try 'time,humidity_pct' ,55
try 'air_c,humidity_pct' ,55
try 'time_utc,air_c' ,12
try 'time,air_c,dew_point_c' ,12,14
try 'time,air_c,' ,12,
try "time,air_c,$(seq -s, -f 'x_%g' 70)" ,12
