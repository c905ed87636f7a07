# Reference values for grouping, made by R's own packages: cluster, stats, fpc.
# Run from the project root: Rscript tests/references/scripts/grouping-r.R > tests/references/grouping-r.json
suppressMessages({
  library(cluster)
  library(fpc)
  library(jsonlite)
})
options(digits = 17)

data(ruspini)
data(agriculture)
data(flower)
sets <- list(
  ruspini = as.matrix(ruspini),
  agriculture = as.matrix(agriculture),
  iris = as.matrix(iris[, 1:4]),
  usarrests = as.matrix(USArrests)
)

# k-medoids: the classical swap and the fast variants must agree before a value is written.
medoids <- function(d, k) {
  classical <- pam(d, k, diss = TRUE)
  same <- sapply(1:6, function(v) isTRUE(all.equal(
    pam(d, k, diss = TRUE, pamonce = v)$objective[["swap"]], classical$objective[["swap"]], tolerance = 1e-12)))
  widths <- silhouette(classical$clustering, d)
  list(
    k = k, medoids = classical$id.med - 1, membership = unname(classical$clustering) - 1,
    build = classical$objective[["build"]], swap = classical$objective[["swap"]],
    variantsAgree = unname(same),
    widths = unname(widths[, "sil_width"]), neighbour = unname(widths[, "neighbor"]) - 1,
    meanWidth = mean(widths[, "sil_width"]),
    groupWidths = unname(tapply(widths[, "sil_width"], widths[, "cluster"], mean))
  )
}

tree <- function(d, method, cuts = 2:5) {
  h <- hclust(d, method)
  list(
    heights = h$height, merge = h$merge,
    cophenetic = if (length(h$order) <= 60) as.vector(cophenetic(h)) else NULL, correlation = cor(as.vector(d), as.vector(cophenetic(h))),
    cuts = lapply(cuts, function(k) list(k = k, membership = unname(cutree(h, k)) - 1))
  )
}

trees <- function(d) {
  squared <- d^2
  list(
    single = tree(d, "single"), complete = tree(d, "complete"), average = tree(d, "average"),
    mcquitty = tree(d, "mcquitty"), wardDofSquared = tree(squared, "ward.D"), wardD = tree(d, "ward.D"),
    wardD2 = tree(d, "ward.D2"), centroidOfSquared = list(heights = hclust(squared, "centroid")$height),
    medianOfSquared = list(heights = hclust(squared, "median")$height)
  )
}

agglomerative <- function(d) list(
  average = agnes(d, method = "average")$ac, single = agnes(d, method = "single")$ac,
  complete = agnes(d, method = "complete")$ac, ward = agnes(d, method = "ward")$ac
)

indices <- function(d, membership) {
  s <- cluster.stats(d, membership + 1)
  list(membership = membership, dunn = s$dunn, calinskiHarabasz = s$ch, silhouette = s$avg.silwidth)
}

one <- function(name) {
  x <- sets[[name]]
  d <- dist(x)
  list(
    points = unname(x),
    medoids = lapply(2:6, function(k) medoids(d, k)),
    trees = trees(d), agglomerativeCoefficient = agglomerative(d),
    indices = lapply(2:5, function(k) indices(d, unname(pam(d, k)$clustering) - 1)),
    withinSquares = sapply(2:5, function(k) { set.seed(1); kmeans(x, k, nstart = 200, iter.max = 100)$tot.withinss })
  )
}

flowers <- daisy(flower, type = list(asymm = 3))
set.seed(20)
random <- matrix(round(rnorm(60 * 5), 6), 60)
randomDissimilarity <- dist(random)

# Gap statistic of one dispersion: cluster's W_k is half the sum of squared pair distances over n_r (d.power = 2)
logW <- sapply(1:5, function(k) {
  g <- if (k == 1) rep(1, nrow(sets$ruspini)) else pam(sets$ruspini, k)$clustering
  log(0.5 * sum(vapply(split(seq_len(nrow(sets$ruspini)), g), function(i) {
    xs <- sets$ruspini[i, , drop = FALSE]; sum(dist(xs)^2 / nrow(xs)) }, 0)))
})
set.seed(7)
gap <- clusGap(sets$ruspini, FUN = function(x, k) list(cluster = pam(x, k, cluster.only = TRUE)), K.max = 6, B = 500, d.power = 2, verbose = FALSE)

# clusterboot's means have sampling error: the test states its tolerance from the number of draws
set.seed(3)
boot <- clusterboot(dist(sets$ruspini), B = 400, distances = TRUE, bootmethod = "boot", clustermethod = pamkCBI,
  k = 4, usepam = TRUE, count = FALSE)
boot3 <- clusterboot(dist(sets$iris), B = 400, distances = TRUE, bootmethod = "boot", clustermethod = pamkCBI,
  k = 3, usepam = TRUE, count = FALSE)
boot5 <- clusterboot(dist(sets$ruspini), B = 400, distances = TRUE, bootmethod = "boot", clustermethod = pamkCBI,
  k = 5, usepam = TRUE, count = FALSE)

set.seed(11)
strength <- prediction.strength(sets$ruspini, Gmin = 2, Gmax = 6, M = 200, clustermethod = claraCBI, classification = "centroid")

# Smallest bandwidth at which density() has one mode, by halving
modes <- function(x, h) {
  y <- density(x, bw = h, n = 4096, cut = 3)$y
  steps <- diff(y)[abs(diff(y)) > 1e-9 * max(y)]
  sum(diff(sign(steps)) < 0)
}
critical <- function(x) {
  low <- 0; high <- diff(range(x))
  for (i in 1:16) { mid <- (low + high) / 2; if (modes(x, mid) > 1) low <- mid else high <- mid }
  high
}
bandwidths <- list(
  list(name = "ruspini x", values = ruspini$x), list(name = "ruspini y", values = ruspini$y),
  list(name = "iris petal length", values = iris$Petal.Length), list(name = "faithful eruptions", values = faithful$eruptions)
)

out <- list(
  tool = paste("R", "cluster", packageVersion("cluster"), "fpc", packageVersion("fpc")),
  version = R.version.string,
  command = "Rscript tests/references/scripts/grouping-r.R > tests/references/grouping-r.json",
  date = format(Sys.Date()),
  sets = setNames(lapply(names(sets), one), names(sets)),
  flower = list(dissimilarity = as.vector(flowers), n = nrow(flower), medoids = lapply(2:4, function(k) medoids(flowers, k)),
    trees = list(average = tree(flowers, "average"), complete = tree(flowers, "complete"))),
  random = list(points = random, medoids = lapply(2:8, function(k) medoids(randomDissimilarity, k)), trees = trees(randomDissimilarity)),
  gap = list(logW = logW, table = unname(gap$Tab), draws = 500),
  stability = list(ruspini4 = boot$bootmean, ruspini4Sizes = as.vector(table(boot$partition)), iris3 = boot3$bootmean,
    iris3Sizes = as.vector(table(boot3$partition)), ruspini5 = boot5$bootmean,
    ruspini5Sizes = as.vector(table(boot5$partition)), draws = 400),
  criticalBandwidth = lapply(bandwidths, function(b) c(b, bandwidth = critical(b$values))),
  predictionStrength = list(mean = strength$mean.pred, draws = 200)
)
cat(toJSON(out, digits = I(17), auto_unbox = TRUE, matrix = "rowmajor"))
