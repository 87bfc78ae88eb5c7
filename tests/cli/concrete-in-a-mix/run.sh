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
