# Mean, standard deviation, skewness G1 and quartiles by R and psych; Michelson's light speeds from MASS.
source("tests/references/scripts/exact-json.R")
suppressMessages({ library(psych); library(MASS) })
samples <- list(
  plain = c(2.1, 3.7, 4.2, 5.8, 6.3, 7.9, 8.4, 9.1),
  lean = c(0.3, 0.4, 0.4, 0.5, 0.9, 1.7, 4.2, 11.5, 32),
  three = c(1, 1, 2),
  negative = c(-3.5, -1.25, 0, 0.5, 8),
  michelson = 299 + michelson$Speed / 1000
)
write_reference("moments", c("psych", "MASS"),
  samples = lapply(samples, function(x) list(
    values = numbers(x), mean = numbers(mean(x)), sd = numbers(sd(x)),
    skewness = numbers(psych::skew(x, type = 2)), quartiles = numbers(quantile(x, c(.25, .5, .75), type = 7)),
    mad = numbers(mad(x, constant = 1)))))
