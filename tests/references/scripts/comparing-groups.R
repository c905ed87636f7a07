# Values for the contrasts, crosstabs and similarities that no other reference file holds.
# Run from the project root: Rscript tests/references/scripts/comparing-groups.R
source("tests/references/scripts/exact-json.R")
suppressMessages({library(vegan); library(stats)})

# Gaussian kernel density at three places, summed exactly; R's rule for the bandwidth.
x <- faithful$eruptions
bw <- bw.nrd0(x)
at <- c(2, 3, 4.5)
density_at <- vapply(at, function(p) mean(dnorm(p, x, bw)), 0)

# Chao's estimate with its standard error on four sites of the dune meadow data and on counts of our own.
data(dune, package = "vegan"); data(BCI, package = "vegan")
plots <- as.matrix(BCI[c(1, 10, 25, 50), ])
chao <- apply(plots, 1, function(row) estimateR(row)[c("S.obs", "S.chao1", "se.chao1")])

# Hodges-Lehmann estimate: median of all differences.
a <- airquality$Ozone[airquality$Month == 5]; a <- a[!is.na(a)]
b <- airquality$Ozone[airquality$Month == 8]; b <- b[!is.na(b)]
shift <- median(outer(a, b, "-"))

# Two groups of InsectSprays, three of PlantGrowth, hair and eye colour.
ab <- InsectSprays[InsectSprays$spray %in% c("C", "D"), ]
w <- wilcox.test(count ~ droplevels(spray), ab, exact = FALSE)
kw <- kruskal.test(count ~ spray, InsectSprays)
write_reference("comparing-groups", c("vegan", "stats"),
  density = list(values = numbers(x), bandwidth = numbers(bw), at = numbers(at), density = numbers(density_at)),
  chao = list(counts = apply(plots, 1, function(row) numbers(row[row > 0]), simplify = FALSE),
    estimates = numbers(chao[2, ]), errors = numbers(chao[3, ])),
  shift = list(first = numbers(a), second = numbers(b), estimate = numbers(shift)),
  sprays = list(groups = lapply(split(InsectSprays$count, InsectSprays$spray), numbers),
    h = numbers(kw$statistic), p = numbers(kw$p.value), u = numbers(w$statistic)),
  hair = list(table = apply(apply(HairEyeColor, c(1, 2), sum), 1, function(r) numbers(r), simplify = FALSE),
    chisq = numbers(chisq.test(apply(HairEyeColor, c(1, 2), sum))$statistic)))
