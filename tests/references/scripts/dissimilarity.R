# Gower dissimilarities of cluster::daisy, and Podani's ranked grades of ade4::dist.ktab.
# Rscript tests/references/scripts/dissimilarity.R
source("tests/references/scripts/exact-json.R")
suppressMessages({ library(cluster); library(ade4) })
column <- function(x, presence) {
  if (presence) return(list(kind = "presence", codes = I(ifelse(is.na(x), -1L, as.integer(as.factor(x)) - 1L))))
  if (is.ordered(x) || is.numeric(x)) return(list(kind = "quantity", values = numbers(x)))
  list(kind = "kinds", codes = I(ifelse(is.na(x), -1L, as.integer(x) - 1L)), levels = nlevels(x))
}
case <- function(name, data, asymm = integer(), weights = rep(1, ncol(data))) {
  type <- if (length(asymm)) list(asymm = asymm) else list()
  binary <- which(vapply(data, nlevels, 1L) == 2L)
  type$symm <- setdiff(binary, asymm)
  if (!length(type$symm)) type$symm <- NULL
  d <- suppressWarnings(daisy(data, metric = "gower", type = type, weights = weights))
  list(name = name, weights = numbers(weights), distances = numbers(d),
    columns = lapply(seq_along(data), function(k) column(data[[k]], k %in% asymm)))
}
gaps <- iris[c(1:20, 61:80, 121:140), ]
gaps[cbind(seq(1, 60, 4), rep(1:5, 3))] <- NA
animal <- as.data.frame(lapply(animals, function(x) factor(x - 1L)))
plants <- droplevels(plantTraits[1:70, ])
cases <- list(
  case("flower", flower), case("flower, third asymmetric", flower, 3L),
  case("flower, weighted", flower, c(1L, 3L), c(1, 2, 0.5, 3, 1, 1, 0.25, 2)),
  case("plantTraits", plants), case("plantTraits, binaries asymmetric", plants, 12:31),
  case("iris with gaps", gaps), case("agriculture", agriculture), case("animals asymmetric", animal, 1:6)
)
grades <- c(1, 1, 2, 2, 2, 3, 5, 5, 6, 4, 2, 1, 6, 6, 6)
# dist.ktab asks for the formula; its second answer is "Podani (1999)'s formula".
ask <- dist.ktab
environment(ask) <- list2env(list(readLines = function(...) "2", cat = function(...) NULL), parent = asNamespace("ade4"))
podani <- ask(ktab.list.df(list(data.frame(g = grades))), "O", scann = TRUE)^2

write_reference("dissimilarity", c("cluster", "ade4"), cases = cases,
  podani = list(grades = numbers(grades), distances = numbers(podani)))
