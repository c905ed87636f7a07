# Beside graded membership and sampled medoids: the grouping that cluster::fanny comes to (its own membership has no
# medoids and differs), and cluster::clara with samples as large as the table.
# Rscript tests/references/scripts/graded-and-sampled.R
source("tests/references/scripts/exact-json.R")
suppressMessages(library(cluster))
crisp <- function(x, k) {
  fit <- fanny(dist(x), k, memb.exp = 1.5, maxit = 5000)
  list(membership = I(unname(fit$clustering) - 1L))
}
sampled <- function(x, k) {
  fit <- clara(x, k, samples = 5, sampsize = nrow(x), pamLike = TRUE)
  list(k = k, medoids = I(fit$i.med - 1L), membership = I(unname(fit$clustering) - 1L), mean = numbers(fit$objective))
}
write_reference("graded-and-sampled", "cluster",
  ruspini = crisp(ruspini, 4), 
  clara = list(ruspini = lapply(2:5, function(k) sampled(ruspini, k)), iris = lapply(2:4, function(k) sampled(iris[1:4], k))))
