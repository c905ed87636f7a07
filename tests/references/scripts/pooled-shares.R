# Dirichlet-multinomial by maximum likelihood, found by R's optim on the likelihood written out with lgamma, from two
# starts, on tables that R carries; the shares are the posterior means at these parameters.
# Rscript tests/references/scripts/pooled-shares.R > tests/references/pooled-shares.json
suppressMessages(library(jsonlite))
tables <- list(caithness = unname(as.matrix(MASS::caith)), admissions = t(unname(UCBAdmissions[1, , ])), hair = unname(margin.table(HairEyeColor, c(2, 1))))
ll <- function(l, x) { a <- exp(l); n <- rowSums(x); sum(lgamma(sum(a)) - lgamma(n + sum(a))) + sum(lgamma(sweep(x, 2, a, "+"))) - nrow(x) * sum(lgamma(a)) }
fit <- function(x) {
  x <- matrix(as.numeric(x), nrow(x))
  best <- NULL
  for (s in c(0.5, 20)) { o <- optim(log(colSums(x) / sum(x) * s), ll, x = x, method = "BFGS", control = list(fnscale = -1, reltol = 1e-16, maxit = 5000))
    for (i in 1:20) o <- optim(o$par, ll, x = x, method = "BFGS", control = list(fnscale = -1, reltol = 1e-16, maxit = 5000, ndeps = rep(1e-5, ncol(x))))
    if (is.null(best) || o$value > best$value) best <- o }
  a <- exp(best$par); list(counts = x, concentration = sum(a), common = a / sum(a), shares = sweep(x, 2, a, "+") / (rowSums(x) + sum(a))) }
cat(toJSON(list(tool = "R optim", version = R.version.string, command = "Rscript tests/references/scripts/pooled-shares.R > tests/references/pooled-shares.json",
  date = as.character(Sys.Date()), cases = lapply(tables, fit)), auto_unbox = TRUE, digits = I(12)))
