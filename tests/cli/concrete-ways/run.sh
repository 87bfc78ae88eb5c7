# The same footing by every way, without prices and with them.
"$GAUGEBOX" concrete proportioned/footing --make 27ft3 --waste 8% --mixer 4ft3 |
    sed -n '/^Ways/,/^$/p'
cat >prices.cfg <<'P'
format = 1; currency = "USD"; tax = "6%";
packs = ( { of = "portland-cement"; mass = "94 lb"; price = "16.90"; supplier = "mill"; },
          { of = "concrete-sand"; volume = "1/2 yd3"; price = "27.00"; supplier = "mill"; },
          { of = "crushed-stone"; volume = "1/2 yd3"; price = "25.50"; supplier = "mill"; },
          { of = "bagged/concrete-80lb"; mass = "80 lb"; price = "7.20"; supplier = "mill"; },
          { of = "ready-mixed"; volume = "1/4 yd3"; price = "48.00"; supplier = "plant"; } );
deliveries = ( { supplier = "mill"; charge = "60.00"; },
               { supplier = "plant"; charge = "120.00"; } );
P
"$GAUGEBOX" concrete proportioned/footing --make 27ft3 --waste 8% --mixer 4ft3 \
    --prices prices.cfg | sed -n '/^Ways/,/^$/p'
"$GAUGEBOX" concrete proportioned/footing-20mpa --make "0.8 m3" --mixer 110L |
    sed -n '/^Ways/,/^$/p'
# A mixer that is too small for one way is said there; for the concrete itself it ends.
"$GAUGEBOX" concrete proportioned/footing --make 3ft3 --mixer "0.6 ft3" |
    sed -n '/^Ways/,/^$/p'
"$GAUGEBOX" concrete proportioned/footing --make 3ft3 --mixer "0.3 ft3"
echo "status $?"
