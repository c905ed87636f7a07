# Ordinations by R's own packages on data that they carry.
# Rscript tests/references/scripts/ordination.R
source("tests/references/scripts/exact-json.R")
suppressMessages({ library(cluster); library(ape); library(ca); library(MASS); library(ade4) })
matrix_rows <- function(m) { m <- as.matrix(m); list(rows = nrow(m), columns = ncol(m), values = numbers(t(m))) }

scaling <- function(name, d, k) {
  fit <- cmdscale(d, k = k, eig = TRUE)
  list(name = name, distances = numbers(d), points = matrix_rows(fit$points), eigenvalues = numbers(fit$eig))
}
corrected <- function(name, d) {
  one <- function(kind) {
    fit <- pcoa(d, correction = kind)
    k <- 3
    list(correction = kind, constant = numbers(as.numeric(regmatches(fit$note[1], regexpr("[0-9]{2,}\\.[0-9]+|0\\.[0-9]{3,}", fit$note[1])))),
      eigenvalues = numbers(fit$values$Corr_eig), points = matrix_rows(fit$vectors.cor[, 1:k]))
  }
  list(name = name, distances = numbers(d),
    lingoes = one("lingoes"), cailliez = one("cailliez"),
    lingoesDistances = numbers(lingoes(d)), cailliezDistances = numbers(cailliez(d)))
}
pca <- function(name, data, scale) {
  fit <- prcomp(data, scale. = scale)
  list(name = name, data = matrix_rows(data), scale = scale, sdev = numbers(fit$sdev),
    rotation = matrix_rows(fit$rotation), scores = matrix_rows(fit$x))
}
simple <- function(name, counts, suprow, supcol) {
  fit <- ca(counts)
  extra <- ca(counts, suprow = suprow, supcol = supcol)
  k <- length(fit$sv)
  principal <- function(standard, sv) sweep(standard, 2, sv, "*")
  ke <- length(extra$sv)
  list(name = name, counts = matrix_rows(counts), eigenvalues = numbers(fit$sv^2),
    rows = matrix_rows(principal(fit$rowcoord[, 1:k], fit$sv)), columns = matrix_rows(principal(fit$colcoord[, 1:k], fit$sv)),
    rowMasses = numbers(fit$rowmass), rowInertias = numbers(fit$rowinertia), columnInertias = numbers(fit$colinertia),
    suprow = suprow - 1L, supcol = supcol - 1L, supplementaryEigenvalues = numbers(extra$sv^2),
    supplementaryRow = numbers(principal(extra$rowcoord[, 1:ke], extra$sv)[suprow, ]),
    supplementaryColumn = numbers(principal(extra$colcoord[, 1:ke], extra$sv)[supcol, ]),
    activeRows = matrix_rows(principal(extra$rowcoord[, 1:ke], extra$sv)[-suprow, ]))
}
kinds <- function(data) lapply(data, function(x) { x <- as.factor(x); list(codes = I(as.integer(x) - 1L), levels = nlevels(x)) })
multiple <- function(name, data) {
  data <- as.data.frame(lapply(data, as.factor))
  fit <- dudi.acm(data, scannf = FALSE, nf = 4)
  adjusted <- mjca(data, lambda = "adjusted")
  list(name = name, columns = unname(kinds(data)), eigenvalues = numbers(fit$eig), rows = matrix_rows(fit$li),
    categories = matrix_rows(fit$co), ratios = matrix_rows(fit$cr), mcaEigenvalues = numbers(mca(data, nf = 4)$d^2),
    adjustedInertias = numbers(adjusted$sv[1:adjusted$nd.max]^2), adjustedShares = numbers(adjusted$inertia.e[1:adjusted$nd.max]))
}
mixed <- function(name, data) {
  fit <- dudi.hillsmith(data, scannf = FALSE, nf = 3)
  columns <- lapply(data, function(x) if (is.factor(x)) list(kind = "kinds", codes = I(as.integer(x) - 1L), levels = nlevels(x)) else list(kind = "quantity", values = numbers(x)))
  list(name = name, columns = unname(columns), eigenvalues = numbers(fit$eig), rows = matrix_rows(fit$li), parts = matrix_rows(fit$co), ratios = matrix_rows(fit$cr))
}
quake <- daisy(quakes[1:300, ], metric = "gower")
cars <- droplevels(na.omit(Cars93[, c("Type", "MPG.city", "AirBags", "DriveTrain", "Horsepower", "Weight", "Origin", "Length")]))
write_reference("ordination", c("stats", "cluster", "ape", "ca", "MASS", "ade4"),
  scalings = list(scaling("eurodist", eurodist, 3), scaling("UScitiesD", UScitiesD, 2),
    scaling("flower, Gower", suppressWarnings(daisy(flower)), 3)),
  iterative = c(list(data = matrix_rows(quakes[1:300, ])), list(points = matrix_rows(cmdscale(quake, k = 4)), eigenvalues = numbers(cmdscale(quake, k = 4, eig = TRUE)$eig[1:4]))),
  corrections = list(corrected("eurodist", eurodist), corrected("flower, Gower", suppressWarnings(daisy(flower)))),
  components = list(pca("USArrests, scaled", USArrests, TRUE), pca("iris", iris[1:4], FALSE), pca("wide: 6 rows of mtcars", mtcars[1:6, ], TRUE)),
  tables = list(simple("smoke (Greenacre 1984)", as.matrix(smoke), 5L, 4L), simple("author", as.matrix(author), 3L, 26L), simple("caith", as.matrix(caith), 2L, 1L)),
  multiples = list(multiple("wg93", wg93[, 1:4]), multiple("farms", farms)),
  mixtures = list(mixed("Cars93", cars), mixed("iris with species", iris)))
