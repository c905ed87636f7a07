# Trees of 36 weaving traditions by 110 traits (Buckley 2012, PLOS ONE 7(12) e52064, CC BY), from R hclust on the Jaccard
# dissimilarity (dist, binary: shared absence left out; a trait that one tradition lacks a reading of is left out for its pairs).
# The data are read where they lie; only merges, heights and cuts are kept.
# Rscript tests/references/scripts/ikat.R
source("tests/references/scripts/exact-json.R")
table <- read.csv("../shared/real/ikat-textiles/ikat_Data_S1.csv", check.names = FALSE, na.strings = "?")
x <- as.matrix(table[, -1])
n <- nrow(x)
d <- dist(x, method = "binary")
tree <- function(method) {
  h <- hclust(d, method)
  # A cut is stated only where no tie can move it.
  sure <- Filter(function(k) h$height[n - k + 1] - h$height[n - k] > 1e-9, 2:8)
  list(heights = numbers(h$height), correlation = numbers(cor(as.vector(d), as.vector(cophenetic(h)))),
    cuts = lapply(sure, function(k) list(k = k, membership = I(unname(cutree(h, k)) - 1L))))
}
write_reference("ikat", "stats", traditions = n, dissimilarities = numbers(d), equalPairs = sum(duplicated(round(as.vector(d), 12))),
  trees = setNames(lapply(c("average", "complete", "single", "mcquitty", "ward.D2"), tree), c("average", "complete", "single", "mcquitty", "ward")))
