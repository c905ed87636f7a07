# p values as a paper prints them, from R's own distribution functions and tests.
# Rscript tests/references/scripts/printed-tests.R
source("tests/references/scripts/exact-json.R")
lines <- list(); add <- function(test, statistic, df, p) lines[[length(lines) + 1]] <<- list(test = test,
  statistic = numbers(statistic), df = numbers(df), p = numbers(p))
for (df in c(1, 2, 5, 18, 60, 240)) for (t in c(0, 0.31, 1, 2.31, -3.07, 6.4)) add("t", t, df, 2 * pt(abs(t), df, lower.tail = FALSE))
for (d in list(c(1, 8), c(2, 27), c(5, 40), c(12, 300))) for (f in c(0.2, 1, 2.51, 4.9, 11.3)) add("F", f, d, pf(f, d[1], d[2], lower.tail = FALSE))
for (df in c(1, 2, 4, 9, 30)) for (x in c(0.1, 1.32, 3.84, 9.49, 22.7)) add("chi-squared", x, df, pchisq(x, df, lower.tail = FALSE))
for (z in c(0, 0.5, 1.64, -1.96, 2.58, 4.1)) add("z", z, numeric(0), 2 * pnorm(abs(z), lower.tail = FALSE))
for (n in c(5, 12, 30, 100)) for (r in c(0.05, -0.31, 0.62, 0.9)) add("r", r, n - 2, 2 * pt(abs(r) * sqrt((n - 2) / (1 - r^2)), n - 2, lower.tail = FALSE))
u <- list()
for (n in list(c(3, 4), c(8, 5), c(10, 12), c(25, 30))) for (share in c(0.1, 0.3, 0.5, 0.8)) {
  w <- round(share * prod(n)); m <- prod(n) / 2; s <- sqrt(prod(n) * (sum(n) + 1) / 12)
  u[[length(u) + 1]] <- list(u = w, n = n, exact = numbers(min(1, 2 * pwilcox(min(w, prod(n) - w), n[1], n[2]))),
    corrected = numbers(2 * pnorm(max(0, abs(w - m) - 0.5) / s, lower.tail = FALSE)),
    plain = numbers(2 * pnorm(abs(w - m) / s, lower.tail = FALSE)))
}
tables <- list()
for (cells in list(c(3, 1, 1, 3), c(12, 5, 3, 9), c(7, 2, 8, 1), c(20, 14, 6, 15))) {
  m <- matrix(cells, 2, byrow = TRUE)
  tables[[length(tables) + 1]] <- list(cells = cells, two = numbers(fisher.test(m)$p.value),
    less = numbers(fisher.test(m, alternative = "less")$p.value), more = numbers(fisher.test(m, alternative = "greater")$p.value),
    pearson = numbers(suppressWarnings(chisq.test(m, correct = FALSE))$statistic),
    yates = numbers(suppressWarnings(chisq.test(m))$statistic))
}
write_reference("printed-tests", "stats", tests = lines, u = u, tables = tables)
