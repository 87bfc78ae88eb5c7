# Reads "function argument df value" and compares each value with that function of R: to
# 2e-12 of the value, as chance.h promises it; and a quantile near zero to 1e-15.
rows <- read.table(file("stdin"), col.names = c("call", "x", "df", "ours"))
rows$theirs <- mapply(function(call, x, df)
    switch(call, pnorm = pnorm(x), qnorm = qnorm(x), pt = pt(x, df), qt = qt(x, df)),
    rows$call, rows$x, rows$df)
below <- rows$call %in% c("pnorm", "pt")
far <- ifelse(below, rows$theirs, rows$x) < 1e-5
off <- abs(rows$ours - rows$theirs)
allowed <- 2e-12 * abs(rows$theirs) + ifelse(below, 0, 1e-15)
bad <- !(off <= allowed)
for (kind in split(data.frame(rows, off, far), paste(rows$call, ifelse(far, "far", ""))))
    cat(sprintf("%-5s %s worst %.1e of the value\n", kind$call[1],
                if (kind$far[1]) "in the tail" else "elsewhere  ",
                max(kind$off / pmax(abs(kind$theirs), 1e-15))))
for (i in head(which(bad), 20))
    with(rows[i, ], cat(sprintf("FAILED %s(%.17g, %g): R %.17g, ours %.17g\n", call, x,
                                df, theirs, ours)))
cat(sprintf("r_quantiles: %d of %d the same as R\n", sum(!bad), nrow(rows)))
quit(status = if (any(bad) || nrow(rows) < 6000) 1 else 0)
