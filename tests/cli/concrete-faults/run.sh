# Bad concretes by options, each with what is allowed; several faults come in one pass.
try() {
    echo "-- $*"
    "$GAUGEBOX" concrete "$@"
    echo "status $?"
}
S='--strength 3000 psi'
try --slump 3in
try --strength "0 psi"
try --strength "-3000 psi"
try --strength "3000"
try --strength "3000 lb"
try --strength "1e9 psi"
try --strength "nan psi"
try --strength "6000 psi"
try --strength "4000 psi" --air severe
try --strength "900 psi"
try --average "1999 psi"
try --average "5001 psi" --air mild
try --units metric --strength "45 MPa"
try --strength "3000 psi" --slump 0in
try --strength "3000 psi" --slump 12in
try --strength "3000 psi" --slump 13in
try --strength "3000 psi" --slump 2-1/2in
try --units metric --strength "20 MPa" --slump "60 mm"
try --strength "3000 psi" --slump 6in --largest 6in
try --strength "3000 psi" --largest 5/8in
try --units metric --strength "20 MPa" --largest 20mm
try --strength "3000 psi" --largest 0in
try --strength "3000 psi" --fineness 2.2
try --strength "3000 psi" --fineness 3.1
try --strength "3000 psi" --fineness 2,8
try --strength "3000 psi" --rodded "160 lb/ft3"
try --strength "3000 psi" --rodded "40 lb/ft3"
try --strength "3000 psi" --rodded "0 lb/ft3"
try --strength "3000 psi" --air hard
try --strength "3000 psi" --air-content 6%
try --strength "3000 psi" --air severe --air-content 40%
try --strength "3000 psi" --sand-moisture 0.4%
try --strength "3000 psi" --stone-moisture 0.1% --stone-absorption 1.2%
try --strength "3000 psi" --sand-moisture -3%
try --strength "3000 psi" --stone-moisture 20%
try --strength "3000 psi" --deviation "400 psi"
try --strength "3000 psi" --deviation "400 psi" --tests 9
try --strength "3000 psi" --tests 30
try --ratio 0.2 --fineness 2.4 --largest 3/8in --slump 7in
try --ratio 0.1
try --strength "3000 psi" --cement concrete-sand
try --strength "3000 psi" --cement masonry-cement-n
try --strength "3000 psi" --sand beach
try --strength "3000 psi" --stone ready-mixed
try --strength "900 psi" --slump 5in --largest 5/8in --fineness 3.5 --sand-moisture 0%
T="--trial-water 7lb --trial-cement 14.5lb --trial-stone 58.6lb --trial-sand 43.5lb"
try --average "3500 psi" --trial-water 7lb
try --average "3500 psi" $T
try --average "3500 psi" $T --trial-unit-mass 149lb/ft3 --trial-full 40lb
try --average "3500 psi" $T --trial-full 8lb --trial-empty 8lb --trial-measure 0.25ft3
try --average "3500 psi" $T --trial-unit-mass 60lb/ft3
try --average "3500 psi" $T --trial-unit-mass 190lb/ft3
try --average "3500 psi" $T --trial-unit-mass 160lb/ft3
try --average "3500 psi" $T --trial-unit-mass 120lb/ft3
try --average "3500 psi" --trial-water 1lb --trial-cement 14.5lb --trial-stone 58lb \
    --trial-sand 43lb --trial-unit-mass 149lb/ft3
try --strength "3000 psi" --average "2500 psi"
try --strength "3000 psi" --stone-gravity 3.9 --largest 3in --rodded "175 lb/ft3"
try --strength "3000 psi" --exposure irc-hard
try --strength "3000 psi" --exposure ""
