# Open data sets with what R computes of them, to be printed and held against the very records.
# Rscript tests/references/scripts/printed-with-data.R
source("tests/references/scripts/exact-json.R")
suppressMessages({library(MASS); library(HSAUR3); library(lattice)})
named <- function(x, words) factor(words[as.integer(factor(x))], levels = words)
data(skulls); data(pottery); data(water); data(CHFLS)
respiratory <- subset(HSAUR3::respiratory, month == 0)
sets <- list(
  list("skulls", data.frame(epoch = skulls$epoch, skulls[, c("mb", "bh", "bl", "nh")]),
    c(epoch = "Epoch"), c(mb = "Maximal breadth", bh = "Basibregmatic height", bl = "Basialveolar length", nh = "Nasal height"), c(1, 1, 1, 1), "mm"),
  list("pottery", data.frame(kiln = paste("kiln", pottery$kiln), pottery[, c("Al2O3", "Fe2O3", "MgO", "K2O")]),
    c(kiln = "Kiln"), c(Al2O3 = "Alumina", Fe2O3 = "Iron oxide", MgO = "Magnesia", K2O = "Potash"), c(0.1, 0.01, 0.01, 0.01), ""),
  list("survey", data.frame(sex = survey$Sex, exercise = c(Freq = "frequent", None = "never", Some = "some")[as.character(survey$Exer)],
      smoker = c(Heavy = "heavy", Never = "no", Occas = "occasional", Regul = "regular")[as.character(survey$Smoke)], height = survey$Height, pulse = survey$Pulse, span = survey$Wr.Hnd),
    c(sex = "Sex", exercise = "Exercise", smoker = "Smoker"), c(height = "Height", pulse = "Pulse", span = "Span of the hand"), c(0.01, 1, 0.1), ""),
  list("Melanoma", data.frame(status = named(Melanoma$status, c("died of it", "alive", "died otherwise")), ulcer = named(Melanoma$ulcer, c("absent", "present")), gender = named(Melanoma$sex, c("female", "male")),
      deep = Melanoma$thickness, age = Melanoma$age), c(status = "Status", ulcer = "Ulcer", gender = "Gender"), c(deep = "Depth", age = "Age"), c(0.01, 1), ""),
  list("Pima", data.frame(diabetic = Pima.te$type, parity = cut(Pima.te$npreg, c(-1, 0, 2, 5, 99), c("none", "one or two", "three to five", "six or more")), glucose = Pima.te$glu, pressure = Pima.te$bp, bmi = Pima.te$bmi),
    c(diabetic = "Diabetic", parity = "Parity"), c(glucose = "Glucose", pressure = "Blood pressure", bmi = "Body mass index"), c(1, 1, 0.1), ""),
  list("singer", data.frame(voice = as.character(singer$voice.part), stature = singer$height), c(voice = "Voice"), c(stature = "Stature"), 1, "in"),
  list("painters", data.frame(school = named(painters$School, c("Renaissance", "Mannerist", "Seicento", "Venetian", "Lombard", "Sixteenth century", "Seventeenth century", "French")),
      painters[, 1:4]), c(school = "School"), c(Composition = "Composition", Drawing = "Drawing", Colour = "Colour", Expression = "Expression"), c(1, 1, 1, 1), ""),
  list("barley", data.frame(farm = as.character(barley$site), year = paste("season", barley$year), yield = round(barley$yield, 2)), c(farm = "Farm", year = "Season"), c(yield = "Yield"), 0.01, ""),
  list("respiratory", data.frame(centre = paste("centre", respiratory$centre), treatment = respiratory$treatment, status = respiratory$status, years = respiratory$age),
    c(centre = "Centre", treatment = "Treatment", status = "State"), c(years = "Years of age"), 1, ""),
  list("water", data.frame(location = water$location, mortality = water$mortality, hardness = water$hardness), c(location = "Location"), c(mortality = "Mortality", hardness = "Hardness"), c(1, 1), ""),
  list("CHFLS", data.frame(quarter = as.character(CHFLS$R_region), schooling = as.character(CHFLS$R_edu), happy = as.character(CHFLS$R_happy), tall = CHFLS$R_height),
    c(quarter = "Quarter", schooling = "Schooling", happy = "Happiness"), c(tall = "Tallness"), 1, ""))
describe <- function(x) { n <- length(x); m <- mean(x); s <- sd(x); q <- quantile(x, c(0.25, 0.5, 0.75), names = FALSE); t <- qt(0.975, n - 1) * s / sqrt(n)
  c(n, m, s, s / sqrt(n), s / m, q[2], q[1], q[3], min(x), max(x), m - t, m + t, sum(x)) }
one <- function(s) {
  d <- s[[2]]; kinds <- names(s[[3]]); measures <- names(s[[4]])
  for (k in kinds) d[[k]] <- as.character(d[[k]])
  samples <- list(); pairs <- list(); several <- list(); counts <- list(); together <- list()
  for (m in measures) for (k in kinds) {
    ok <- !is.na(d[[m]]) & !is.na(d[[k]]); g <- split(d[[m]][ok], d[[k]][ok]); g <- g[sapply(g, length) > 2]
    if (length(g) < 2) next
    whole <- !is.na(d[[m]])
    samples[[length(samples) + 1]] <- list(measure = m, by = k, groups = names(g), sizes = numbers(sapply(names(g), function(n) sum(d[[k]] == n, na.rm = TRUE))),
      values = lapply(unname(g), function(x) numbers(describe(x))), all = numbers(describe(d[[m]][whole])))
    long <- data.frame(v = unlist(g), f = rep(names(g), sapply(g, length)))
    if (length(g) == length(unique(d[[k]][!is.na(d[[k]])]))) {
      a <- anova(lm(v ~ f, long)); w <- oneway.test(v ~ f, long); h <- kruskal.test(v ~ f, long)
      several[[length(several) + 1]] <- list(measure = m, by = k, f = numbers(c(a[["F value"]][1], a$Df, a[["Pr(>F)"]][1])), welch = numbers(c(w$statistic, w$parameter, w$p.value)),
        h = numbers(c(h$statistic, h$parameter, h$p.value)), eta = numbers(a[["Sum Sq"]][1] / sum(a[["Sum Sq"]])))
    }
    for (i in seq_along(g)) for (j in seq_along(g)) if (i < j && i + j < 8) {
      x <- g[[i]]; y <- g[[j]]; st <- t.test(x, y, var.equal = TRUE); we <- t.test(x, y); n <- c(length(x), length(y))
      u0 <- wilcox.test(x, y, exact = FALSE, correct = FALSE); u1 <- wilcox.test(x, y, exact = FALSE, correct = TRUE)
      dd <- (mean(x) - mean(y)) / sqrt(((n[1] - 1) * var(x) + (n[2] - 1) * var(y)) / (sum(n) - 2))
      pairs[[length(pairs) + 1]] <- list(measure = m, by = k, a = names(g)[i], b = names(g)[j], n = numbers(n), difference = numbers(mean(x) - mean(y)),
        student = numbers(c(st$statistic, st$parameter, st$p.value, st$conf.int)), welch = numbers(c(we$statistic, we$parameter, we$p.value, we$conf.int)),
        u = numbers(c(u0$statistic, u0$p.value, u1$p.value)), d = numbers(dd), g = numbers(dd * (1 - 3 / (4 * (sum(n) - 2) - 1))))
    }
  }
  for (a in kinds) for (b in kinds) if (a != b) {
    t <- table(d[[a]], d[[b]]); q <- suppressWarnings(chisq.test(t, correct = FALSE)); m <- unclass(t)
    two <- if (all(dim(t) == 2)) { y <- suppressWarnings(chisq.test(t)); f <- fisher.test(t); or <- m[1, 1] * m[2, 2] / (m[1, 2] * m[2, 1]); se <- sqrt(sum(1 / m))
      numbers(c(y$statistic, y$p.value, f$p.value, or, exp(log(or) - qnorm(0.975) * se), exp(log(or) + qnorm(0.975) * se))) } else numbers(numeric(0))
    counts[[length(counts) + 1]] <- list(rows = a, columns = b, rowTerms = rownames(t), columnTerms = colnames(t), cells = lapply(seq_len(nrow(t)), function(i) numbers(m[i, ])),
      chi = numbers(c(q$statistic, q$parameter, q$p.value)), v = numbers(sqrt(q$statistic / sum(t) / (min(dim(t)) - 1))), two = two)
  }
  for (i in seq_along(measures)) for (j in seq_along(measures)) if (i < j) {
    ok <- complete.cases(d[, measures[c(i, j)]]); x <- d[[measures[i]]][ok]; y <- d[[measures[j]]][ok]; r <- cor.test(x, y)
    rho <- suppressWarnings(cor.test(x, y, method = "spearman", exact = FALSE)); tau <- suppressWarnings(cor.test(x, y, method = "kendall", exact = FALSE))
    together[[length(together) + 1]] <- list(a = measures[i], b = measures[j], n = numbers(sum(ok)), r = numbers(c(r$estimate, r$parameter, r$p.value, r$conf.int)),
      rho = numbers(c(rho$estimate, rho$p.value)), tau = numbers(c(tau$estimate, tau$p.value)))
  }
  text <- capture.output(write.csv(d, row.names = TRUE, na = "", quote = TRUE)); text[1] <- sub('^""', '"record"', text[1])
  list(data = s[[1]], csv = paste(text, collapse = "\n"), kinds = as.list(s[[3]]), measures = as.list(s[[4]]), steps = numbers(s[[5]]),
    samples = samples, pairs = pairs, several = several, counts = counts, together = together)
}
write_reference("printed-with-data", c("MASS", "HSAUR3", "lattice"), sets = lapply(sets, one))
