# Diversity of the whole behind a sample: vegan's estimators and, for coverage and entropy, the published formulas in R's own functions.
# Rscript tests/references/scripts/diversity-estimates.R > tests/references/diversity-estimates.json
suppressMessages({ library(jsonlite); library(vegan) })
num <- function(x) unname(as.numeric(x))
data(BCI); data(dune)
# Spiders of Ellison et al. 2010 as printed in Chao et al. 2014, Ecol. Monogr. 84:45 (counts from memory).
girdled <- c(46, 22, 17, 15, 15, 9, 8, 6, 6, 4, 2, 2, 2, 2, rep(1, 12))
logged <- c(88, 22, 16, 15, 13, 10, 8, 8, 7, 7, 7, 5, 4, 4, 4, 3, 3, 3, 3, 2, 2, 2, 2, rep(1, 14))
coverage <- function(x) {
  n <- sum(x); f1 <- sum(x == 1); f2 <- sum(x == 2)
  if (f1 == 0) return(1)
  if (f2 > 0) 1 - f1 / n * ((n - 1) * f1 / ((n - 1) * f1 + 2 * f2)) else 1 - f1 / n * ((n - 1) * (f1 - 1) / ((n - 1) * (f1 - 1) + 2))
}
# Chao, Wang & Jost 2013, equation 7b; the harmonic part by digamma, the tail of the series summed as it stands.
entropy <- function(x) {
  x <- x[x > 0]; n <- sum(x); f1 <- sum(x == 1); f2 <- sum(x == 2)
  h <- sum(x / n * (digamma(n) - digamma(x)))
  if (f1 == 0) return(h)
  a <- if (f2 > 0) 2 * f2 / ((n - 1) * f1 + 2 * f2) else if (f1 > 1) 2 / ((n - 1) * (f1 - 1) + 2) else 1
  if (a == 1) return(h)
  k <- 0:20000
  h + f1 / n * (1 - a) * sum((1 - a)^k / (n + k))
}
coverageAt <- function(x, m) { x <- x[x > 0]; n <- sum(x); 1 - sum(x / n * exp(lchoose(n - x, m) - lchoose(n - 1, m))) }
samples <- list(girdled = girdled, logged = logged, bci1 = num(BCI[1, ]), bci23 = num(BCI[23, ]), dune3 = num(dune[3, ]), few = c(4, 3, 1, 0, 1, 1), one = c(5, 4, 2, 2, 1))
out <- lapply(samples, function(x) { y <- x[x > 0]; n <- sum(y); m <- floor(n / 2)
  list(counts = x, chao1 = num(estimateR(as.integer(y))["S.chao1"]), coverage = coverage(y), entropy = entropy(y),
       same = num(sum(y * (y - 1)) / (n * (n - 1))), unbiased = num(simpson.unb(matrix(y, 1))), half = m, coverageHalf = coverageAt(y, m), rarefiedHalf = num(rarefy(y, m))) })
cat(toJSON(list(tool = "R vegan", version = paste0(R.version.string, "; vegan ", packageVersion("vegan")),
  command = "Rscript tests/references/scripts/diversity-estimates.R > tests/references/diversity-estimates.json", date = as.character(Sys.Date()),
  samples = out), auto_unbox = TRUE, digits = I(17)))
