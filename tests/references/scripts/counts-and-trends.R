# Contingency tables, binomial limits, interval-censored distributions, rank correlation.
# Rscript tests/references/scripts/counts-and-trends.R > tests/references/counts-and-trends.json
suppressMessages({ library(jsonlite); library(survival); library(vcd); library(MASS) })
num <- function(x) unname(as.numeric(x))
tables <- list(
  hairEye = margin.table(HairEyeColor, c(1, 2)),
  ucbDepartments = margin.table(UCBAdmissions, c(1, 3)),
  caithness = as.matrix(caith),
  jobs = matrix(c(1, 2, 1, 0, 3, 3, 6, 1, 10, 10, 14, 9, 6, 7, 12, 11), 4),
  tea = matrix(c(3, 1, 1, 3), 2),
  sparse = matrix(c(3, 0, 0, 1, 2, 2, 4, 0, 1, 0, 0, 5), 3)
)
contingency <- lapply(tables, function(t) {
  x <- suppressWarnings(chisq.test(t, correct = FALSE)); a <- assocstats(as.table(t))
  f <- if (sum(t) <= 120) fisher.test(t, workspace = 2e7)$p.value else NULL
  list(table = unname(apply(unname(t), 1, function(r) num(r), simplify = FALSE)), chiSquared = num(x$statistic), df = num(x$parameter), p = pchisq(num(x$statistic), num(x$parameter), lower.tail = FALSE),
       g = a$chisq_tests[1, 1], gP = pchisq(a$chisq_tests[1, 1], num(x$parameter), lower.tail = FALSE), cramersV = a$cramer, fisher = f,
       residuals = unname(apply(unname(x$stdres), 1, num, simplify = FALSE)))
})
limits <- lapply(list(c(81, 263), c(15, 148), c(0, 20), c(1, 29), c(23, 60), c(7, 7)), function(v)
  list(count = v[1], n = v[2], exact = num(binom.test(v[1], v[2])$conf.int),
       jeffreys = qbeta(c(0.025, 0.975), v[1] + 0.5, v[2] - v[1] + 0.5)))
# interval readings drawn for this check: exact, between two inspections, or open above
set.seed(7)
true <- round(rgamma(40, 4, 0.1)); width <- sample(c(0, 0, 5, 10, 20), 40, TRUE); open <- runif(40) < 0.2
half <- ifelse(width > 0, 0.5, 0) # no end meets an exact reading: survfit takes intervals as open below, Turnbull as closed
readings <- list(low = pmax(0, true - width - half), high = ifelse(open, NA, true + width + half))
readings$low[open] <- true[open] + 0.25
turnbull <- { s <- survfit(Surv(ifelse(readings$low == 0, NA, readings$low), readings$high, type = "interval2") ~ 1)
  list(low = readings$low, high = ifelse(is.na(readings$high), "Infinity", readings$high), time = s$time, surv = s$surv) }
spear <- lapply(list(cars = list(cars$speed, cars$dist), trees = list(trees$Girth, trees$Height), mtcars = list(mtcars$wt, mtcars$mpg)), function(v)
  { r <- suppressWarnings(cor.test(v[[1]], v[[2]], method = "spearman", exact = FALSE)); list(x = v[[1]], y = v[[2]], rho = num(r$estimate), p = r$p.value) })
welch <- { x <- log(cats$Hwt[cats$Sex == "F"]); y <- log(cats$Hwt[cats$Sex == "M"]); m <- log(1.2)
  list(first = x, second = y, margin = m, p = max(t.test(x, y, mu = -m, alternative = "greater")$p.value, t.test(x, y, mu = m, alternative = "less")$p.value),
       interval = num(t.test(x, y, conf.level = 0.9)$conf.int)) }
cat(toJSON(list(tool = "R (stats, vcd, survival, MASS)", version = paste0(R.version.string, "; vcd ", packageVersion("vcd"), "; survival ", packageVersion("survival")),
  command = "Rscript tests/references/scripts/counts-and-trends.R > tests/references/counts-and-trends.json", date = as.character(Sys.Date()),
  contingency = contingency, limits = limits, turnbull = turnbull, spearman = spear, equivalence = welch), auto_unbox = TRUE, digits = I(17), null = "null", pretty = TRUE))
