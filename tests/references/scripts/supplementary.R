# Supplementary attributes of principal components: correlations, correlation ratios and centres.
# Rscript tests/references/scripts/supplementary.R
source("tests/references/scripts/exact-json.R")
fit <- prcomp(iris[, 1:3], scale. = TRUE)
scores <- fit$x
species <- iris$Species
write_reference("supplementary", "stats",
  data = lapply(1:4, function(j) numbers(iris[[j]])), species = as.integer(species) - 1L,
  correlations = numbers(cor(scores, iris$Petal.Width)),
  ratios = numbers(sapply(1:3, function(k) summary(lm(scores[, k] ~ species))$r.squared)),
  centres = lapply(1:3, function(s) numbers(colMeans(scores[as.integer(species) == s, ]))))
