# Rank tests, analysis of variance and distribution tests on data that R and its packages carry.
# Rscript tests/references/scripts/rank-tests.R > tests/references/rank-tests.json
suppressMessages({ library(jsonlite); library(coin); library(MASS); library(car) })
num <- function(x) unname(as.numeric(x))
split_by <- function(value, group) { s <- split(value, group, drop = TRUE); lapply(unname(s), num) }

sets <- list(
  airquality = { a <- airquality[!is.na(airquality$Ozone), ]; split_by(a$Ozone, a$Month) },
  insects = split_by(InsectSprays$count, InsectSprays$spray),
  plants = split_by(PlantGrowth$weight, PlantGrowth$group),
  chicks = split_by(chickwts$weight, chickwts$feed),
  hollanderWolfe61 = list(c(2.9, 3.0, 2.5, 2.6, 3.2), c(3.8, 2.7, 4.0, 2.4), c(2.8, 3.4, 3.7, 2.2, 2.0)),
  twoTiedGroups = list(c(1, 1, 1, 2, 2), c(2, 2, 1, 1), c(3, 3, 3)),
  cats = split_by(cats$Hwt, cats$Sex)
)

k_sample <- lapply(sets, function(groups) {
  value <- unlist(groups); g <- factor(rep(seq_along(groups), lengths(groups)))
  kw <- kruskal.test(value, g)
  fit <- anova(lm(value ~ g))
  welch <- tryCatch(oneway.test(value ~ g), error = function(e) NULL)
  bf <- leveneTest(value, g, center = median)
  list(groups = groups,
    kruskal = list(statistic = num(kw$statistic), df = num(kw$parameter), p = num(kw$p.value)),
    anova = list(statistic = fit$`F value`[1], p = fit$`Pr(>F)`[1]),
    welch = if (is.null(welch) || is.nan(welch$statistic)) NULL else list(statistic = num(welch$statistic), df = num(welch$parameter[2]), p = num(welch$p.value)),
    brownForsythe = list(statistic = bf$`F value`[1], p = bf$`Pr(>F)`[1]))
})

hw41a <- c(0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46)
hw41b <- c(1.15, 0.88, 0.90, 0.74, 1.21)
pairs <- list(
  hollanderWolfe41 = list(hw41a, hw41b),
  plantsControlTreated1 = sets$plants[1:2],
  insectsAB = sets$insects[c(1, 2)],
  insectsAC = sets$insects[c(1, 3)],
  sleep = split_by(sleep$extra, sleep$group),
  cats = sets$cats,
  threeAgainstThree = list(c(1, 2, 3), c(4, 5, 6))
)
two_sample <- lapply(pairs, function(p) {
  x <- p[[1]]; y <- p[[2]]; value <- c(x, y); g <- factor(rep(1:2, c(length(x), length(y))))
  ties <- anyDuplicated(value) > 0
  small <- length(value) <= 30
  w <- suppressWarnings(wilcox.test(x, y, exact = FALSE, correct = TRUE))
  exact <- if (small) num(pvalue(wilcox_test(value ~ g, distribution = "exact"))) else NULL
  ks <- suppressWarnings(ks.test(x, y, exact = TRUE))
  list(first = x, second = y, ties = ties, U = num(w$statistic), pNormal = w$p.value, pExact = exact,
    ks = list(statistic = num(ks$statistic), p = ks$p.value),
    shift = median(outer(x, y, "-")),
    rankCorrelationDelta = 2 * num(w$statistic) / (length(x) * length(y)) - 1)
})
cat(toJSON(list(tool = "R (stats, coin, car)", version = paste0(R.version.string, "; coin ", packageVersion("coin"), "; car ", packageVersion("car")),
  command = "Rscript tests/references/scripts/rank-tests.R > tests/references/rank-tests.json", date = as.character(Sys.Date()),
  kSample = k_sample, twoSample = two_sample), auto_unbox = TRUE, digits = NA, null = "null", pretty = TRUE))
