# Sample quantiles of all nine types by R's quantile().
# Rscript tests/references/scripts/quantile.R
source("tests/references/scripts/exact-json.R")
samples <- list(c(2.1, 3.7, 4.2, 5.8, 6.3, 7.9, 8.4, 9.1), c(7), c(3, 3, 3, 5), precip[1:35], c(1, 2), rivers)
probs <- c(0, 0.025, 0.1, 0.25, 1/3, 0.5, 0.75, 0.9, 0.975, 1)
cases <- list()
for (x in samples) for (type in 1:9)
  cases[[length(cases) + 1]] <- list(values = numbers(x), type = type, quantiles = numbers(quantile(x, probs, type = type)))
write_reference("quantile", "stats", probabilities = numbers(probs), cases = cases)
