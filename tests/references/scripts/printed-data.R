# Figures as a paper would print them, from an open table, by R's own functions.
# Rscript tests/references/scripts/printed-data.R
source("tests/references/scripts/exact-json.R")
d <- read.csv("datasets/open/penguins.csv", na.strings = ".", check.names = FALSE)
names(d) <- c("record", "species", "island", "beakLength", "beakDepth", "flipperLength", "bodyMass", "sex")
claims <- list(); say <- function(...) claims[[length(claims) + 1]] <<- list(...)
fix <- function(x, k) formatC(x, digits = k, format = "f")
gentoo <- d[d$species == "Gentoo", ]; chin <- d[d$species == "Chinstrap", ]; adelie <- d[d$species == "Adelie", ]
one <- "species in Gentoo"; two <- "species in Chinstrap"; three <- "species in Adelie"
x <- na.omit(gentoo$flipperLength)
for (k in 1:3) {
  say(quantity = "mean", attribute = "flipperLength", select = one, printed = fix(mean(x), k))
  say(quantity = "sd", attribute = "flipperLength", select = one, printed = fix(sd(x), k))
  say(quantity = "se", attribute = "flipperLength", select = one, printed = fix(sd(x) / sqrt(length(x)), k))
  say(quantity = "cv", attribute = "flipperLength", select = one, printed = paste(fix(100 * sd(x) / mean(x), k), "%"))
}
say(quantity = "q1", attribute = "flipperLength", select = one, printed = fix(quantile(x, .25), 2))
say(quantity = "q3", attribute = "flipperLength", select = one, printed = fix(quantile(x, .75), 2))
say(quantity = "median", attribute = "flipperLength", select = one, printed = fix(median(x), 1))
say(quantity = "total", attribute = "flipperLength", select = one, printed = fix(sum(x), 0))
say(quantity = "n", attribute = "flipperLength", select = one, printed = as.character(length(x)))
a <- summary(aov(bodyMass ~ species, d))[[1]]; w <- oneway.test(bodyMass ~ species, d)
f <- function(q, t) say(quantity = q, test = "F", attribute = "bodyMass; species", printed = t)
f("statistic", fix(a$`F value`[1], 2)); f("df", sprintf("%d, %d", a$Df[1], a$Df[2]))
f("statistic", fix(w$statistic, 2)); f("df", sprintf("%d, %s", as.integer(w$parameter[1]), fix(w$parameter[2], 2)))
small <- aov(beakDepth ~ island, d[d$species == "Adelie", ]); s <- summary(small)[[1]]
say(quantity = "p", test = "F", attribute = "beakDepth; island", select = three, printed = fix(s$`Pr(>F)`[1], 3))
pair <- function(q, m, t, sided = "") say(quantity = q, test = m, attribute = "bodyMass", select = three, versus = two, printed = t, sided = sided)
student <- t.test(adelie$bodyMass, chin$bodyMass, var.equal = TRUE); welch <- t.test(adelie$bodyMass, chin$bodyMass)
for (t in list(student, welch)) { pair("statistic", "t", fix(t$statistic, 3)); pair("df", "t", fix(t$parameter, 1)); pair("p", "t", fix(t$p.value, 3)) }
pair("p", "t", fix(student$p.value / 2, 3), "one")
u <- suppressWarnings(wilcox.test(adelie$bodyMass, chin$bodyMass, exact = FALSE, correct = FALSE))
v <- suppressWarnings(wilcox.test(adelie$bodyMass, chin$bodyMass, exact = FALSE, correct = TRUE))
pair("statistic", "U", fix(u$statistic, 1)); pair("p", "U", fix(u$p.value, 3)); pair("p", "U", fix(v$p.value, 3))
sign <- sign(u$statistic - sum(!is.na(adelie$bodyMass)) * sum(!is.na(chin$bodyMass)) / 2)
for (t in list(u, v)) { pair("statistic", "z", fix(sign * qnorm(t$p.value / 2, lower.tail = FALSE), 2)); pair("p", "z", fix(t$p.value, 3)) }
heavy <- function(e) c(sum(e$bodyMass >= 4000, na.rm = TRUE), sum(!is.na(e$bodyMass)))
k <- rbind(heavy(adelie), heavy(chin)); shares <- suppressWarnings(prop.test(k[, 1], k[, 2], correct = FALSE))
z <- sign(shares$estimate[1] - shares$estimate[2]) * sqrt(shares$statistic)
both <- function(q, t) say(quantity = q, test = "z", select = three, versus = two, counted = "bodyMass >= 4000", printed = t)
both("statistic", fix(z, 2)); both("p", fix(shares$p.value, 3))
say(quantity = "share", select = three, counted = "bodyMass >= 4000", printed = paste(fix(100 * shares$estimate[1], 1), "%"))
x2 <- suppressWarnings(chisq.test(table(d$species, d$island), correct = FALSE))
say(quantity = "statistic", test = "chi-squared", attribute = "species; island", printed = fix(x2$statistic, 1))
say(quantity = "df", test = "chi-squared", attribute = "species; island", printed = as.character(x2$parameter))
r <- cor.test(d$beakLength, d$beakDepth)
say(quantity = "correlation", attribute = "beakLength; beakDepth", printed = fix(r$estimate, 3))
say(quantity = "df", test = "r", attribute = "beakLength; beakDepth", printed = as.character(r$parameter))
ci <- t.test(x)$conf.int
say(quantity = "interval", attribute = "flipperLength", select = one, printed = sprintf("%s-%s", fix(ci[1], 1), fix(ci[2], 1)))
write_reference("printed-data", "stats", claims = claims)
