# Records placed on axes that they had no say in. One species of iris has no say, or every third car.
# pca: predict() of prcomp. mca: predict() of MASS::mca, ade4::suprow. mixed: ade4::suprow.
# pcoa: dissimilarities of Gower over the ranges of the active records; the root of them is Euclidean, so that the
# place of a new record is its full coordinates (cmdscale of old and new together) seen along the principal
# components (prcomp, predict) of the old. Without a root, and with Lingoes' constant (ape::pcoa), by the
# formula of Gower 1968 in R's matrix algebra.
# Rscript tests/references/scripts/supplementary-records.R
source("tests/references/scripts/exact-json.R")
suppressMessages({ library(MASS); library(ade4); library(ape) })
matrix_rows <- function(m) { m <- as.matrix(m); list(rows = nrow(m), columns = ncol(m), values = numbers(t(m))) }

late <- iris$Species == "virginica"
fit <- prcomp(iris[!late, 1:4], scale. = TRUE)
places <- predict(fit, iris[late, 1:4])
squares <- rowSums(scale(iris[late, 1:4], fit$center, fit$scale)^2)
components <- list(late = I(which(late) - 1L), active = matrix_rows(fit$x), places = matrix_rows(places), cos2 = matrix_rows(places^2 / squares))

cars <- droplevels(na.omit(Cars93[, c("Type", "AirBags", "DriveTrain", "Origin", "MPG.city", "Horsepower")]))
passive <- seq(3, nrow(cars), 3)
passive <- passive[sapply(passive, function(i) all(sapply(1:4, function(j) cars[i, j] %in% cars[-passive, j])))]
kinds <- cars[, 1:4]
fit <- dudi.acm(droplevels(kinds[-passive, ]), scannf = FALSE, nf = 4)
sup <- suprow(fit, kinds[passive, ])
multiple <- mca(kinds[-passive, ], nf = 4)
squares <- rowSums(sweep(as.matrix(sup$tabsup)^2, 2, fit$cw, "*"))
kinds_out <- list(eigenvalues = numbers(fit$eig), active = matrix_rows(fit$li), places = matrix_rows(sup$lisup), cos2 = matrix_rows(sup$lisup^2 / squares),
  mca = matrix_rows(predict(multiple, kinds[passive, ], type = "row")), mcaActive = matrix_rows(multiple$rs))
fit <- dudi.hillsmith(cars[-passive, ], scannf = FALSE, nf = 4)
sup <- suprow(fit, cars[passive, ])
squares <- rowSums(sweep(as.matrix(sup$tabsup)^2, 2, fit$cw, "*"))
mixed_out <- list(active = matrix_rows(fit$li), places = matrix_rows(sup$lisup), cos2 = matrix_rows(sup$lisup^2 / squares))

# Gower 1971 between rows of x and y, numbers by the ranges of the active records, kinds the same or not.
ranges <- apply(cars[-passive, 5:6], 2, function(v) diff(range(v)))
gower <- function(x, y) {
  parts <- c(lapply(1:4, function(j) 1 * outer(as.character(x[, j]), as.character(y[, j]), "!=")),
    lapply(5:6, function(j) abs(outer(x[, j], y[, j], "-")) / ranges[j - 4]))
  Reduce(`+`, parts) / length(parts)
}
old <- cars[-passive, ]; new <- cars[passive, ]; n <- nrow(old)
through_full_space <- function(f) {
  whole <- f(gower(rbind(old, new), rbind(old, new)))
  full <- cmdscale(as.dist(whole), k = nrow(whole) - 1, eig = TRUE)
  stopifnot(min(full$eig) > -1e-9)
  axes <- prcomp(full$points[1:n, ])
  list(active = matrix_rows(axes$x[, 1:3]), places = matrix_rows(predict(axes, full$points[-(1:n), ])[, 1:3]),
    squares = numbers(rowSums(sweep(full$points[-(1:n), ], 2, colMeans(full$points[1:n, ]))^2)))
}
by_formula <- function(constant) {
  squares <- gower(old, old)^2 + 2 * constant; diag(squares) <- 0
  centred <- -0.5 * (diag(n) - 1 / n) %*% squares %*% (diag(n) - 1 / n)
  e <- eigen(centred, symmetric = TRUE)
  x <- e$vectors[, 1:3] %*% diag(sqrt(e$values[1:3]))
  b <- diag(centred)
  to <- gower(new, old)^2 + 2 * constant
  list(active = matrix_rows(x),
    places = matrix_rows(0.5 * (matrix(b, nrow(new), n, byrow = TRUE) - to) %*% x %*% diag(1 / e$values[1:3])))
}
note <- pcoa(as.dist(gower(old, old)), correction = "lingoes")$note[1]
constant <- -min(eigen(-0.5 * (diag(n) - 1 / n) %*% gower(old, old)^2 %*% (diag(n) - 1 / n), symmetric = TRUE)$values)
stopifnot(grepl(substr(format(constant, digits = 12), 1, 8), note, fixed = TRUE))
write_reference("supplementary-records", c("stats", "MASS", "ade4", "ape"),
  iris = list(data = lapply(1:4, function(j) numbers(iris[[j]])), species = as.character(iris$Species)), components = components,
  cars = list(columns = lapply(cars, function(x) if (is.factor(x)) I(as.character(x)) else numbers(x)), passive = I(passive - 1L)),
  kinds = kinds_out, mixed = mixed_out,
  root = through_full_space(sqrt), plain = by_formula(0), lingoes = by_formula(constant))
