# One and two Gaussian parts fitted to rounded readings by their grouped likelihood, maximised with R's optim.
# Rscript tests/references/scripts/interval-mixture.R
source("tests/references/scripts/exact-json.R")
set.seed(20261130)
loglik <- function(low, high, share, mean, sd) sum(log(rowSums(sapply(seq_along(mean), function(j)
  share[j] * (pnorm(high, mean[j], sd[j]) - pnorm(low, mean[j], sd[j]))))))
fit <- function(low, high, starts, unpack) {
  runs <- lapply(starts, function(s) { r <- list(par = s)
    for (i in 1:6) r <- optim(r$par, function(p) { u <- unpack(p); -loglik(low, high, u$share, u$mean, u$sd) },
      method = if (i %% 2 == 1) "Nelder-Mead" else "BFGS", control = list(maxit = 20000, reltol = 1e-15)); r })
  best <- runs[[which.min(sapply(runs, function(r) r$value))]]
  c(unpack(best$par), list(logLikelihood = -best$value))
}
one <- function(p) list(share = 1, mean = p[1], sd = exp(p[2]))
equal <- function(p) list(share = c(plogis(p[1]), 1 - plogis(p[1])), mean = p[2:3], sd = rep(exp(p[4]), 2))
own <- function(p) list(share = c(plogis(p[1]), 1 - plogis(p[1])), mean = p[2:3], sd = exp(p[4:5]))
cases <- lapply(list(list(step = 1, n = 80), list(step = 2, n = 120)), function(case) {
  x <- round(ifelse(runif(case$n) < 0.4, rnorm(case$n, 4, 1), rnorm(case$n, 11, 2)) / case$step) * case$step
  low <- x - case$step / 2; high <- x + case$step / 2
  out <- function(f) list(share = numbers(f$share), mean = numbers(f$mean), sd = numbers(f$sd), logLikelihood = numbers(f$logLikelihood))
  list(step = case$step, values = numbers(x),
    one = out(fit(low, high, list(c(mean(x), log(sd(x)))), one)),
    equal = out(fit(low, high, list(c(-0.4, 4, 11, 0.4)), equal)),
    own = out(fit(low, high, list(c(-0.4, 4, 11, 0, 0.7)), own)))
})
write_reference("interval-mixture", "stats", cases = cases)
