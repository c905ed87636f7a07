# Dip statistics, one-variable Gaussian mixtures and discriminant analysis: packages diptest, mclust, MASS.
# Rscript tests/references/scripts/modes.R > tests/references/modes.json
suppressMessages({ library(jsonlite); library(diptest); library(mclust); library(MASS) })
num <- function(x) unname(as.numeric(x))
data(statfaculty); data(geyser, package = "MASS")
sets <- list(statfaculty = num(statfaculty), eruptions = num(faithful$eruptions), waiting = num(faithful$waiting),
  galaxies = num(galaxies) / 1000, precip = num(precip), petal = num(iris$Petal.Length), quakes = num(quakes$depth),
  four = c(1, 2, 3, 4), ties = c(1, 1, 1, 2, 2, 5, 5, 5, 5), two = c(0, 0, 0, 1, 1, 1), even = num(1:20), rivers = log(num(rivers)))
dips <- lapply(sets, function(x) list(x = x, dip = dip(x)))
set.seed(2)
dips$statfaculty$p <- dip.test(statfaculty, simulate.p.value = TRUE, B = 20000)$p.value
dips$eruptions$p <- dip.test(faithful$eruptions, simulate.p.value = TRUE, B = 20000)$p.value
dips$precip$p <- dip.test(precip, simulate.p.value = TRUE, B = 20000)$p.value
mix <- function(x, G, model) { m <- Mclust(x, G = G, modelNames = model, control = emControl(tol = 1e-14, itmax = 1e6), verbose = FALSE)
  p <- m$parameters; s <- sqrt(rep(p$variance$sigmasq, length.out = G)); o <- order(p$mean)
  list(x = x, k = G, spread = if (model == "E") "equal" else "own", logLikelihood = m$loglik, bic = num(m$bic), mean = num(p$mean[o]), sd = num(s[o]), share = num(p$pro[o])) }
mixtures <- list(mix(sets$eruptions, 2, "V"), mix(sets$eruptions, 2, "E"), mix(sets$waiting, 2, "V"), mix(sets$petal, 2, "V"), mix(sets$petal, 3, "E"), mix(sets$waiting, 1, "V"))
lin <- function(x, g) { a <- lda(x, g); p <- predict(a, x); cv <- lda(x, g, CV = TRUE)
  list(x = unname(as.matrix(x)), groups = as.integer(g) - 1L, posterior = unname(p$posterior), left = unname(cv$posterior), leftClass = as.integer(cv$class) - 1L) }
cat(toJSON(list(tool = "R (diptest, mclust, MASS)", version = paste0(R.version.string, "; diptest ", packageVersion("diptest"), "; mclust ", packageVersion("mclust"), "; MASS ", packageVersion("MASS")),
  command = "Rscript tests/references/scripts/modes.R > tests/references/modes.json", date = as.character(Sys.Date()),
  dips = dips, mixtures = mixtures, discriminant = list(iris = lin(iris[, 1:4], iris$Species), crabs = lin(crabs[, 4:8], crabs$sex))), auto_unbox = TRUE, digits = I(17)))
