# How often two heaps are found at 5 %, by diptest's dip against samples from the even distribution, and by mclust's
# likelihood ratio of two parts of one spread against one, limits simulated from one normal part.
# Rscript tests/references/scripts/split-power.R
source("tests/references/scripts/exact-json.R")
suppressMessages({library(diptest); library(mclust)})
set.seed(20261125)
ratio <- function(x) { a <- Mclust(x, G = 1, modelNames = "X", verbose = FALSE); b <- Mclust(x, G = 2, modelNames = "E", verbose = FALSE)
  if (is.null(b)) 0 else 2 * (b$loglik - a$loglik) }
heaps <- function(n, share, d) rnorm(n) + d * (runif(n) >= share)
distances <- c(1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 8)
powers <- list()
for (n in c(50, 110)) for (share in c(0.5, 0.3)) {
  even <- quantile(replicate(2000, dip(runif(n))), 0.95); one <- quantile(replicate(400, ratio(rnorm(n))), 0.95)
  powers[[length(powers) + 1]] <- list(n = n, share = share, distances = numbers(distances),
    dip = numbers(sapply(distances, function(d) mean(replicate(1000, dip(heaps(n, share, d)) > even)))),
    ratio = numbers(sapply(distances, function(d) mean(replicate(200, ratio(heaps(n, share, d)) > one)))))
}
write_reference("split-power", c("diptest", "mclust"), powers = powers)
