# What R makes of the three open data sets, read by R from the same CSV files.
# Run from the project root: Rscript tests/references/scripts/open-data.R
source("tests/references/scripts/exact-json.R")
suppressMessages(library(cluster))

table_of <- function(file, numbers, kinds = character(0), logged = character(0)) {
  d <- read.csv(file.path("datasets/open", file), check.names = FALSE, na.strings = c("", "."))
  d[logged] <- log(d[logged])
  x <- d[c(numbers, kinds)]
  x[kinds] <- lapply(x[kinds], factor)
  x
}

summarise <- function(x, k) {
  nothing <- which(rowSums(!is.na(x)) == 0)
  if (length(nothing) > 0) x <- x[-nothing, , drop = FALSE]
  n <- nrow(x)
  d <- daisy(x, metric = "gower")
  v <- as.vector(d)
  p <- pam(d, k, diss = TRUE)
  trees <- lapply(c(average = "average", complete = "complete"), function(method) numbers(sort(hclust(d, method)$height)))
  sq <- cmdscale(d, k = 2, eig = TRUE)
  list(
    left_out = nothing, n = n,
    # Every 97th pair in R's order, the upper triangle row by row, and sums over all of them.
    every97 = numbers(v[seq(1, length(v), by = 97)]),
    sum = numbers(sum(v)), sum_of_squares = numbers(sum(v^2)), largest = numbers(max(v)),
    k = k, medoids = p$id.med, build = numbers(p$objective[["build"]] * n), swap = numbers(p$objective[["swap"]] * n),
    silhouette = numbers(p$silinfo$avg.width), sizes = as.vector(table(p$clustering)),
    heights = trees,
    eigenvalues = numbers(sq$eig[1:5]),
    points = list(first = numbers(sq$points[, 1]), second = numbers(sq$points[, 2]))
  )
}

write_reference("open-data", c("cluster", "stats"),
  iris = summarise(table_of("iris.csv",
    c("Sepal length (cm)", "Sepal width (cm)", "Petal length (cm)", "Petal width (cm)")), 3),
  penguins = summarise(table_of("penguins.csv",
    c("Beak Length (mm)", "Beak Depth (mm)", "Flipper Length (mm)", "Body Mass (g)"), "Sex"), 3),
  countries = summarise(table_of("countries.csv",
    c("income", "health", "population"), logged = c("income", "population")), 3))
