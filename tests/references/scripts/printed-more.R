# A second bed of right figures, of other open data than printed-bed: data sets that R and its package MASS carry.
# Rscript tests/references/scripts/printed-more.R
source("tests/references/scripts/exact-json.R")
suppressMessages(library(MASS))
sets <- list(
  list("morley", "speed", morley$Speed, paste("Run", morley$Expt), 10),
  list("sleep", "extra", sleep$extra, paste("drug", sleep$group), 0.1),
  list("OrchardSprays", "decrease", OrchardSprays$decrease, as.character(OrchardSprays$treatment), 1),
  list("CO2", "uptake", CO2$uptake, paste(CO2$Type, CO2$Treatment), 0.1),
  list("npk", "yield", npk$yield, paste("block", npk$block), 0.1),
  list("swiss", "Examination", swiss$Examination, ifelse(swiss$Catholic > 50, "Catholic", "Protestant"), 1),
  list("USArrests", "Murder", USArrests$Murder, as.character(state.region), 0.1),
  list("faithful", "waiting", faithful$waiting, ifelse(faithful$eruptions > 3, "long", "short"), 1),
  list("crabs", "CL", crabs$CL, paste(crabs$sp, crabs$sex), 0.1),
  list("crabs", "FL", crabs$FL, paste(crabs$sp, crabs$sex), 0.1),
  list("birthwt", "bwt", birthwt$bwt, c("white", "black", "other")[birthwt$race], 1),
  list("birthwt", "age", birthwt$age, c("non-smoker", "smoker")[birthwt$smoke + 1], 1),
  list("anorexia", "Postwt", anorexia$Postwt, as.character(anorexia$Treat), 0.1),
  list("cabbages", "HeadWt", cabbages$HeadWt, paste(cabbages$Cult, cabbages$Date), 0.1),
  list("quine", "Days", quine$Days, as.character(quine$Age), 1),
  list("Cars93", "Price", Cars93$Price, as.character(Cars93$Type), 0.1),
  list("immer", "Y1", immer$Y1, as.character(immer$Var), 0.1),
  list("genotype", "Wt", genotype$Wt, paste("litter", genotype$Litter), 0.1))
describe <- function(x) { n <- length(x); m <- mean(x); s <- sd(x); q <- quantile(x, c(0.25, 0.5, 0.75), names = FALSE)
  t <- qt(0.975, n - 1) * s / sqrt(n); c(n, m, s, s / sqrt(n), s / m, q[2], q[1], q[3], min(x), max(x), m - t, m + t, max(x) - min(x), q[3] - q[1], sum(x)) }
tests <- list(); add <- function(kind, statistic, df, p, n, ...) tests[[length(tests) + 1]] <<- list(kind = kind,
  statistic = numbers(statistic), df = numbers(df), p = numbers(p), n = numbers(n), ...)
samples <- list()
for (s in sets) {
  g <- split(s[[3]], s[[4]]); g <- g[sapply(g, length) > 2]
  samples[[length(samples) + 1]] <- list(data = s[[1]], of = s[[2]], step = s[[5]], groups = names(g),
    readings = lapply(unname(g), numbers), values = lapply(unname(g), function(x) numbers(describe(x))), all = numbers(describe(unlist(g))))
  ps <- c()
  for (i in seq_along(g)) for (j in seq_along(g)) if (i < j) {
    x <- g[[i]]; y <- g[[j]]; n <- c(length(x), length(y)); at <- list(data = s[[1]], of = s[[2]], a = names(g)[i], b = names(g)[j])
    a <- t.test(x, y, var.equal = TRUE); b <- t.test(x, y); ps <- c(ps, a$p.value)
    d <- (mean(x) - mean(y)) / sqrt(((n[1] - 1) * var(x) + (n[2] - 1) * var(y)) / (sum(n) - 2)); df <- sum(n) - 2
    two <- c(mean(x), sd(x), mean(y), sd(y))
    add("student", a$statistic, a$parameter, a$p.value, n, at = at, cohen = numbers(d), hedges = numbers(d * (1 - 3 / (4 * df - 1))), eta = numbers(a$statistic^2 / (a$statistic^2 + df)), ci = numbers(a$conf.int), two = numbers(two))
    add("welch", b$statistic, b$parameter, b$p.value, n, at = at, cohen = numbers(d), ci = numbers(b$conf.int), two = numbers(two))
    one <- t.test(x, y, alternative = "greater", var.equal = TRUE); add("greater", one$statistic, one$parameter, one$p.value, n, at = at)
    w <- wilcox.test(x, y, exact = FALSE, correct = FALSE); m <- prod(n) / 2
    z <- sign(w$statistic - m) * qnorm(w$p.value / 2, lower.tail = FALSE)
    add("u-tied", w$statistic, numeric(0), w$p.value, n, at = at, z = numbers(z), r = numbers(abs(z) / sqrt(sum(n))), median = numbers(c(median(x), median(y))))
    if (!any(duplicated(c(x, y)))) { w <- wilcox.test(x, y); add("u", w$statistic, numeric(0), w$p.value, n, at = at) }
    v <- var.test(x, y); add("variance", v$statistic, v$parameter, v$p.value, n)
  }
  all <- stack(setNames(g, make.unique(names(g)))); o <- anova(lm(values ~ ind, all)); h <- kruskal.test(values ~ ind, all); wa <- oneway.test(values ~ ind, all)
  k <- length(g); n <- nrow(all)
  ss <- o[["Sum Sq"]]; ms <- o[["Mean Sq"]]
  add("anova", o[["F value"]][1], o$Df, o[["Pr(>F)"]][1], sapply(g, length), at = list(data = s[[1]], of = s[[2]]), eta = numbers(ss[1] / sum(ss)), omega = numbers((ss[1] - o$Df[1] * ms[2]) / (sum(ss) + ms[2])), ss = numbers(c(ss, sum(ss))), ms = numbers(ms))
  add("welch-anova", wa$statistic, wa$parameter, wa$p.value, n)
  add("kruskal", h$statistic, h$parameter, h$p.value, n, at = list(data = s[[1]], of = s[[2]]), epsilon = numbers(h$statistic / (n - 1)), eta = numbers((h$statistic - k + 1) / (n - k)))
  b <- bartlett.test(values ~ ind, all); add("bartlett", b$statistic, b$parameter, b$p.value, n)
  if (length(ps) > 1) { add("family", numeric(0), numeric(0), ps, n, holm = numbers(p.adjust(ps, "holm")), bonferroni = numbers(p.adjust(ps, "bonferroni")), bh = numbers(p.adjust(ps, "BH")), hochberg = numbers(p.adjust(ps, "hochberg"))) }
}
pairs <- list(list("women", women$height, women$weight), list("trees", trees$Girth, trees$Volume), list("cars", cars$speed, cars$dist), list("swiss", swiss$Fertility, swiss$Education),
  list("anorexia", anorexia$Prewt, anorexia$Postwt), list("cats", cats$Bwt, cats$Hwt), list("immer", immer$Y1, immer$Y2), list("attitude", attitude$rating, attitude$complaints),
  list("stackloss", stackloss$Air.Flow, stackloss$stack.loss), list("rock", rock$area, rock$peri), list("USArrests", USArrests$Murder, USArrests$UrbanPop), list("crabs", crabs$FL, crabs$RW),
  list("hills", hills$dist, hills$time), list("mammals", rank(mammals$body), rank(mammals$brain)), list("longley", longley$GNP, longley$Employed), list("LifeCycleSavings", LifeCycleSavings$sr, LifeCycleSavings$pop15))
for (q in pairs) { x <- q[[2]]; y <- q[[3]]; n <- length(x)
  r <- cor.test(x, y); add("pearson", r$estimate, r$parameter, r$p.value, n, ci = numbers(r$conf.int), r2 = numbers(r$estimate^2))
  for (e in c(FALSE, TRUE)) if (!e || !(any(duplicated(x)) || any(duplicated(y)))) {
    s <- suppressWarnings(cor.test(x, y, method = "spearman", exact = e)); add("spearman", s$estimate, n - 2, s$p.value, n)
    k <- suppressWarnings(cor.test(x, y, method = "kendall", exact = e && n < 50)); add("kendall", k$estimate, numeric(0), k$p.value, n, z = numbers(if (e) NA else k$statistic)) }
  f <- summary(lm(y ~ x)); add("regression", f$fstatistic[1], f$fstatistic[2:3], pf(f$fstatistic[1], f$fstatistic[2], f$fstatistic[3], lower.tail = FALSE), n, r2 = numbers(c(f$r.squared, f$adj.r.squared)), slope = numbers(f$coefficients[2, ]))
  p <- t.test(x, y, paired = TRUE); add("paired", p$statistic, p$parameter, p$p.value, n, ci = numbers(p$conf.int), cohen = numbers(mean(x - y) / sd(x - y)))
  w <- suppressWarnings(wilcox.test(x, y, paired = TRUE, exact = FALSE)); add("signed", w$statistic, numeric(0), w$p.value, n)
  o <- t.test(x, mu = 1.05 * mean(x)); add("one-sample", o$statistic, o$parameter, o$p.value, n)
}
two <- function(data, m) list(data = data, rows = rownames(m), columns = colnames(m), m = m)
caith <- as.matrix(caith); farms2 <- table(farms$Mois, farms$Manag)
tables <- list(two("caith", caith), two("occupationalStatus", { m <- unclass(occupationalStatus); rownames(m) <- paste("class", 1:8); colnames(m) <- paste("son", 1:8); m }),
  two("survey", { m <- table(survey$Smoke, survey$Exer); unclass(m) }), two("survey", unclass(table(survey$Sex, survey$Clap))), two("survey", unclass(table(survey$Fold, survey$Sex))), two("survey", unclass(table(survey$W.Hnd, survey$Sex))),
  two("birthwt", { m <- unclass(table(c("white", "black", "other")[birthwt$race], c("no", "smokes")[birthwt$smoke + 1])); m }), two("birthwt", unclass(table(c("normal", "low")[birthwt$low + 1], c("no", "smokes")[birthwt$smoke + 1]))),
  two("quine", unclass(table(quine$Age, quine$Lrn))), two("quine", unclass(table(quine$Eth, quine$Sex))), two("Cars93", unclass(table(Cars93$Type, Cars93$Origin))), two("Cars93", unclass(table(Cars93$Cylinders, Cars93$Origin))),
  two("housing", { m <- xtabs(Freq ~ Sat + Infl, housing); matrix(m, nrow(m), dimnames = dimnames(m)) }), two("housing", { m <- xtabs(Freq ~ Type + Cont, housing); matrix(m, nrow(m), dimnames = dimnames(m)) }),
  two("bacteria", unclass(table(bacteria$trt, bacteria$y))), two("farms", unclass(farms2)), two("esoph", { m <- xtabs(cbind(ncases, ncontrols) ~ agegp, esoph); matrix(m, nrow(m), dimnames = list(rownames(m), colnames(m))) }),
  two("Pima.tr", unclass(table(cut(Pima.tr$age, c(20, 25, 30, 40, 70)), Pima.tr$type))), two("anorexia", unclass(table(anorexia$Treat, ifelse(anorexia$Postwt > anorexia$Prewt, "gained", "lost")))))
counts <- lapply(tables, function(t) { m <- matrix(as.numeric(t$m), nrow(t$m)); q <- suppressWarnings(chisq.test(m, correct = FALSE)); e <- q$expected
  g <- 2 * sum(ifelse(m > 0, m * log(m / e), 0))
  more <- if (all(dim(m) == 2)) { y <- suppressWarnings(chisq.test(m)); f <- fisher.test(m); l <- log(m[1, 1] * m[2, 2] / m[1, 2] / m[2, 1]); s <- sqrt(sum(1 / m))
    list(yates = numbers(c(y$statistic, y$p.value)), fisher = numbers(f$p.value), or = numbers(exp(c(l, l - qnorm(0.975) * s, l + qnorm(0.975) * s)))) } else list()
  c(list(data = t$data, rows = t$rows, columns = t$columns, cells = lapply(seq_len(nrow(m)), function(i) numbers(m[i, ])),
    chi = numbers(q$statistic), df = numbers(q$parameter), p = numbers(q$p.value), v = numbers(sqrt(q$statistic / sum(m) / (min(dim(m)) - 1))), g = numbers(c(g, pchisq(g, q$parameter, lower.tail = FALSE)))), more) })
goodness <- lapply(list(c(315, 101, 108, 32), c(60, 48, 39, 55), c(12, 19, 8), c(20, 31, 14, 25, 10)), function(x) { e <- rep(1, length(x)); u <- chisq.test(x); list(counts = x, statistic = numbers(u$statistic), df = numbers(u$parameter), p = numbers(u$p.value)) })
two_way <- list(); for (m in list(list("warpbreaks", lm(breaks ~ wool * tension, warpbreaks)), list("npk", lm(yield ~ block + N * P * K, npk)), list("ToothGrowth", lm(len ~ supp * factor(dose), ToothGrowth)), list("cabbages", lm(HeadWt ~ Cult * Date, cabbages)), list("quine", lm(Days ~ Eth * Sex, quine)))) {
  a <- anova(m[[2]]); two_way[[length(two_way) + 1]] <- list(data = m[[1]], rows = trimws(rownames(a)), df = numbers(a$Df), ss = numbers(a[["Sum Sq"]]), ms = numbers(a[["Mean Sq"]]), f = numbers(a[["F value"]]), p = numbers(a[["Pr(>F)"]])) }
write_reference("printed-more", "MASS", samples = samples, tests = tests, counts = counts, goodness = goodness, anova = two_way)
