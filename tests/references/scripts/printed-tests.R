# p values as a paper prints them, from R's own distribution functions and tests.
# Rscript tests/references/scripts/printed-tests.R
source("tests/references/scripts/exact-json.R")
tail_of <- function(test, s, df) switch(test, t = 2 * pt(s, df, lower.tail = FALSE), z = 2 * pnorm(s, lower.tail = FALSE),
  F = pf(s, df[1], df[2], lower.tail = FALSE), `chi-squared` = pchisq(s, df, lower.tail = FALSE),
  r = if (s >= 1) 0 else 2 * pt(s * sqrt(df / (1 - s^2)), df, lower.tail = FALSE))
# p at the two ends of what prints as the statistic to two decimals, and as broken df to one, rounded or cut off
ends <- function(test, s, df) { a <- round(abs(s), 2); broken <- df != round(df)
  dfs <- list(df, df - 0.05 * broken, df + 0.1 * broken)
  c(min(sapply(dfs, function(d) tail_of(test, a + 0.01, d))), max(sapply(dfs, function(d) tail_of(test, max(0, a - 0.005), d)))) }
lines <- list(); add <- function(test, statistic, df, p) lines[[length(lines) + 1]] <<- list(test = test,
  statistic = numbers(statistic), df = numbers(df), p = numbers(p), ends = numbers(ends(test, statistic, df)))
for (df in c(1, 2, 3, 5, 9, 18, 31.4, 60, 240)) for (t in c(0, 0.31, 1, 1.7, 2.31, -3.07, 6.4)) add("t", t, df, 2 * pt(abs(t), df, lower.tail = FALSE))
for (d in list(c(1, 8), c(1, 33), c(2, 27), c(3, 14.6), c(5, 40), c(12, 300))) for (f in c(0.2, 1, 1.84, 2.51, 3.4, 4.9, 11.3)) add("F", f, d, pf(f, d[1], d[2], lower.tail = FALSE))
for (df in c(1, 2, 3, 4, 6, 9, 30)) for (x in c(0.1, 1.32, 3.84, 6.6, 9.49, 15.2, 22.7, 41)) add("chi-squared", x, df, pchisq(x, df, lower.tail = FALSE))
for (z in c(0, 0.13, 0.5, 1.04, 1.64, -1.96, 2.17, 2.58, -3.3, 4.1)) add("z", z, numeric(0), 2 * pnorm(abs(z), lower.tail = FALSE))
for (n in c(4, 5, 8, 12, 30, 100)) for (r in c(0.05, -0.18, -0.31, 0.44, 0.62, 0.9)) add("r", r, n - 2, 2 * pt(abs(r) * sqrt((n - 2) / (1 - r^2)), n - 2, lower.tail = FALSE))
u <- list()
for (n in list(c(3, 4), c(8, 5), c(6, 15), c(10, 12), c(19, 20), c(25, 30))) for (share in c(0.1, 0.2, 0.3, 0.41, 0.5, 0.8)) {
  w <- round(share * prod(n)); m <- prod(n) / 2; s <- sqrt(prod(n) * (sum(n) + 1) / 12)
  u[[length(u) + 1]] <- list(u = w, n = n, exact = numbers(min(1, 2 * pwilcox(min(w, prod(n) - w), n[1], n[2]))),
    corrected = numbers(2 * pnorm(max(0, abs(w - m) - 0.5) / s, lower.tail = FALSE)),
    plain = numbers(2 * pnorm(abs(w - m) / s, lower.tail = FALSE)))
}
tables <- list()
for (cells in list(c(3, 1, 1, 3), c(12, 5, 3, 9), c(7, 2, 8, 1), c(20, 14, 6, 15), c(0, 6, 5, 2), c(31, 2, 18, 11), c(9, 9, 4, 13), c(1, 24, 8, 30))) {
  m <- matrix(cells, 2, byrow = TRUE)
  tables[[length(tables) + 1]] <- list(cells = cells, two = numbers(fisher.test(m)$p.value),
    less = numbers(fisher.test(m, alternative = "less")$p.value), more = numbers(fisher.test(m, alternative = "greater")$p.value),
    pearson = numbers(suppressWarnings(chisq.test(m, correct = FALSE))$statistic),
    yates = numbers(suppressWarnings(chisq.test(m))$statistic))
}
write_reference("printed-tests", "stats", tests = lines, u = u, tables = tables)
