# Samples, tests and tables of counts of open data sets that R carries, as doubles, to be printed in many styles.
# Rscript tests/references/scripts/printed-bed.R
source("tests/references/scripts/exact-json.R")
sets <- list(
  list("warpbreaks", "breaks", warpbreaks$breaks, paste(warpbreaks$wool, warpbreaks$tension), 1),
  list("warpbreaks", "breaks", warpbreaks$breaks, as.character(warpbreaks$tension), 1),
  list("iris", "sepal length", iris$Sepal.Length, as.character(iris$Species), 0.1),
  list("iris", "petal width", iris$Petal.Width, as.character(iris$Species), 0.1),
  list("iris", "sepal width", iris$Sepal.Width, as.character(iris$Species), 0.1),
  list("ToothGrowth", "len", ToothGrowth$len, paste(ToothGrowth$supp, ToothGrowth$dose), 0.1),
  list("chickwts", "weight", chickwts$weight, as.character(chickwts$feed), 1),
  list("PlantGrowth", "weight", PlantGrowth$weight, as.character(PlantGrowth$group), 0.01),
  list("InsectSprays", "count", InsectSprays$count, as.character(InsectSprays$spray), 1),
  list("mtcars", "mpg", mtcars$mpg, paste("cyl", mtcars$cyl), 0.1),
  list("mtcars", "hp", mtcars$hp, paste("gear", mtcars$gear), 1),
  list("airquality", "Ozone", airquality$Ozone[!is.na(airquality$Ozone)], month.name[airquality$Month[!is.na(airquality$Ozone)]], 1),
  list("airquality", "Wind", airquality$Wind, month.name[airquality$Month], 0.1),
  list("infert", "age", infert$age, as.character(infert$education), 1),
  list("attenu", "mag", attenu$mag, paste("m", floor(attenu$mag)), 0.1),
  list("quakes", "stations", quakes$stations, paste("mag", floor(quakes$mag)), 1))
describe <- function(x) { n <- length(x); m <- mean(x); s <- sd(x); q <- quantile(x, c(0.25, 0.5, 0.75), names = FALSE)
  t <- if (n > 1) qt(0.975, n - 1) * s / sqrt(n) else NA
  c(n, m, s, s / sqrt(n), s / m, q[2], q[1], q[3], min(x), max(x), m - t, m + t) }
samples <- list(); tests <- list()
add <- function(kind, statistic, df, p, n, ...) tests[[length(tests) + 1]] <<- list(kind = kind,
  statistic = numbers(statistic), df = numbers(df), p = numbers(p), n = numbers(n), ...)
for (s in sets) {
  groups <- split(s[[3]], s[[4]]); groups <- groups[sapply(groups, length) > 2]
  samples[[length(samples) + 1]] <- list(data = s[[1]], of = s[[2]], step = s[[5]], groups = names(groups),
    values = lapply(unname(groups), function(g) numbers(describe(g))), all = numbers(describe(unlist(groups))))
  for (i in seq_along(groups)) for (j in seq_along(groups)) if (i < j) {
    x <- groups[[i]]; y <- groups[[j]]; n <- c(length(x), length(y))
    if (sd(x) + sd(y) == 0) next
    a <- t.test(x, y, var.equal = TRUE); b <- t.test(x, y); v <- var.test(x, y)
    sp <- sqrt(((n[1] - 1) * var(x) + (n[2] - 1) * var(y)) / (sum(n) - 2))
    add("student", a$statistic, a$parameter, a$p.value, n, effect = numbers((mean(x) - mean(y)) / sp), ci = numbers(a$conf.int))
    add("welch", b$statistic, b$parameter, b$p.value, n, ci = numbers(b$conf.int))
    tied <- any(duplicated(c(x, y)))
    for (correct in c(TRUE, FALSE)) { w <- wilcox.test(x, y, exact = FALSE, correct = correct)
      add(if (tied) "u-tied" else "u", w$statistic, numeric(0), w$p.value, n) }
    if (!tied) { w <- wilcox.test(x, y, exact = TRUE); add("u", w$statistic, numeric(0), w$p.value, n) }
    add("variance", v$statistic, v$parameter, v$p.value / 1, n)
    k <- min(n); if (k > 5) { r <- cor.test(x[1:k], y[1:k]); add("pearson", r$estimate, r$parameter, r$p.value, k)
      rho <- cor.test(x[1:k], y[1:k], method = "spearman", exact = FALSE); add("spearman", rho$estimate, k - 2, rho$p.value, k)
      tau <- cor.test(x[1:k], y[1:k], method = "kendall", exact = FALSE); add("kendall", tau$estimate, numeric(0), tau$p.value, k)
      if (!any(duplicated(x[1:k])) && !any(duplicated(y[1:k]))) {
        rho <- cor.test(x[1:k], y[1:k], method = "spearman"); add("spearman", rho$estimate, k - 2, rho$p.value, k)
        tau <- cor.test(x[1:k], y[1:k], method = "kendall"); add("kendall", tau$estimate, numeric(0), tau$p.value, k) }
      gap <- x[1:k] - y[1:k]; pt <- t.test(gap); add("paired", pt$statistic, pt$parameter, pt$p.value, k, effect = numbers(mean(gap) / sd(gap)))
      if (all(gap != 0) && !any(duplicated(abs(gap)))) { w <- wilcox.test(gap, exact = TRUE); add("signed", w$statistic, numeric(0), w$p.value, k) } }
  }
  g <- stack(setNames(groups, make.unique(names(groups)))); o <- anova(lm(values ~ ind, g)); w <- oneway.test(values ~ ind, g); h <- kruskal.test(values ~ ind, g)
  add("anova", o[["F value"]][1], o$Df, o[["Pr(>F)"]][1], nrow(g), eta = numbers(o[["Sum Sq"]][1] / sum(o[["Sum Sq"]])), table = numbers(c(o$Df, o[["Sum Sq"]], o[["Mean Sq"]])))
  add("welch-anova", w$statistic, w$parameter, w$p.value, nrow(g))
  add("kruskal", h$statistic, h$parameter, h$p.value, nrow(g), epsilon = numbers(h$statistic / (nrow(g) - 1)))
}
two <- function(x, a, b) { m <- apply(x, c(a, b), sum); list(rows = rownames(m), columns = colnames(m), m = m) }
counts <- list()
tables <- c(list(two(HairEyeColor, 1, 2), two(HairEyeColor, 1, 3), two(HairEyeColor, 2, 3), two(Titanic, 1, 4), two(Titanic, 2, 4), two(Titanic, 1, 2),
  two(UCBAdmissions, 3, 1), two(UCBAdmissions, 2, 1), two(UCBAdmissions, 3, 2)),
  lapply(1:6, function(i) { m <- UCBAdmissions[, , i]; list(rows = rownames(m), columns = colnames(m), m = m) }),
  lapply(1:4, function(i) { m <- HairEyeColor[i, , ]; list(rows = rownames(m), columns = colnames(m), m = m) }),
  lapply(list(c("education", "induced"), c("education", "parity"), c("education", "case")), function(v) { m <- table(infert[[v[1]]], infert[[v[2]]]); list(rows = rownames(m), columns = paste(v[2], colnames(m)), m = m) }),
  lapply(list(c("cyl", "gear"), c("cyl", "carb"), c("gear", "am")), function(v) { m <- table(mtcars[[v[1]]], mtcars[[v[2]]]); list(rows = paste(v[1], rownames(m)), columns = paste(v[2], colnames(m)), m = m) }))
for (t in tables) {
  m <- matrix(as.numeric(t$m), nrow(t$m)); q <- suppressWarnings(chisq.test(m, correct = FALSE))
  counts[[length(counts) + 1]] <- list(rows = t$rows, columns = t$columns, cells = lapply(seq_len(nrow(m)), function(i) numbers(m[i, ])),
    chi = numbers(q$statistic), df = numbers(q$parameter), p = numbers(q$p.value), v = numbers(sqrt(q$statistic / sum(m) / (min(dim(m)) - 1))),
    yates = if (all(dim(m) == 2)) numbers(unlist(suppressWarnings(chisq.test(m))[c("statistic", "p.value")])) else numbers(numeric(0)))
}
write_reference("printed-bed", character(0), samples = samples, tests = tests, counts = counts)
