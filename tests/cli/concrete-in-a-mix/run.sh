# A concrete in a file of mixes: every fault by its line, and what must not stand beside.
mkdir own
cat >own/yard.cfg <<'F'
format = 1;
mixes = (
  { name = "good"; like = "proportioned/footing"; title = "GOOD"; source = "own";
    concrete = { strength = "2500 psi"; slump = "4 in"; largest = "1 in"; fineness = 2.6; }; },
  { name = "beside"; like = "proportioned/footing"; title = "BESIDE"; source = "own";
    air = "4%"; largest = "1 in";
    water = { by = "binder"; least = "40%"; usual = "45%"; never_past = "50%"; };
    parts = ( { material = "portland-cement"; volume = 1; } ); },
  { name = "outside"; like = "proportioned/footing"; title = "OUTSIDE"; source = "own";
    concrete = { strength = "9000 psi"; slump = "5 in"; largest = "5/8 in";
                 fineness = 1.9; sand_moisture = "0.2%"; }; },
  { name = "unread"; like = "proportioned/footing"; title = "UNREAD"; source = "own";
    concrete = { strenght = "3000 psi"; slump = "3"; air = true; }; },
  { name = "tried"; like = "proportioned/footing"; title = "TRIED"; source = "own";
    concrete = { strength = "2500 psi"; trial = { water = "7 lb"; cement = "14.5 lb"; };
    }; },
  { name = "plant"; like = "concrete/1-2-4"; title = "PLANT"; source = "own";
    parts = ( { material = "portland-cement"; volume = 1; },
              { material = "ready-mixed"; volume = 3; } ); }
);
F
"$GAUGEBOX" concrete yard/good --mixes own
echo "status $?"
sed -i '5,$d' own/yard.cfg && sed -i '4s/},$/}/' own/yard.cfg && echo ');' >>own/yard.cfg
"$GAUGEBOX" concrete yard/good --mixes own | sed -n 1,22p
"$GAUGEBOX" mix yard/good --mixes own | sed -n 1,14p
# An heir of a proportioned mix that changes one of its other keys; both by --mixes and
# out of a job. The heir of a faulty one is told of by the fault of the other.
cat >own/yard.cfg <<'F'
format = 1;
mixes = (
  { name = "heir"; like = "proportioned/footing"; title = "HEIR"; source = "own"; life = "1h"; }
);
F
"$GAUGEBOX" concrete yard/heir --mixes own | sed -n '1,4p;/^LIFE/,/^HOLD/p'
cat >job.cfg <<'F'
format = 1;
site = { name = "Yard"; };
crew = { mixer = { kind = "drum"; rated = "4 ft3"; }; };
mixes = (
  { name = "first"; like = "proportioned/steps-air"; title = "FIRST"; source = "own";
    concrete = { strength = "3000 psi"; slump = "3 in"; air = "severe"; attack = "frost"; }; },
  { name = "second"; like = "own/first"; title = "SECOND"; source = "own"; life = "1h"; }
);
pieces = ( { name = "slab"; kind = "other"; size = "4 ft x 3 ft";
             layers = ( { kind = "slab"; mix = "own/second"; depth = "4 in"; } ); } );
F
"$GAUGEBOX" concrete own/second --job job.cfg | sed -n '1,4p;/^LIFE/,/^HOLD/p'
sed -i 's/slump = "3 in"/slump = "5 in"/' job.cfg
"$GAUGEBOX" concrete own/second --job job.cfg
echo "status $?"
