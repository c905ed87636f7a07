# Correspondence analysis of three tables of counts: author and smoke of the package ca (Greenacre, Nenadic and
# Friendly, GPL-2 or later; smoke is invented data of Greenacre 1984, author counts of letters), and HairEyeColor
# of R itself (Snee 1974). Principal inertias, and the standard coordinates of supplementary rows.
# Rscript tests/references/scripts/count-tables.R
source("tests/references/scripts/exact-json.R")
library(ca)
data(smoke); data(author)
hair <- apply(HairEyeColor, c(1, 2), sum)
table_of <- function(x) list(rows = rownames(x), columns = colnames(x),
  counts = lapply(seq_len(nrow(x)), function(i) as.integer(unlist(x[i, ]))))
solve_of <- function(x, sup = NA) { fit <- if (is.na(sup)) ca(x) else ca(x, suprow = sup)
  list(table = table_of(as.matrix(x)), inertias = numbers(fit$sv^2),
       supplementary = if (is.na(sup)) NULL else rownames(as.matrix(x))[sup],
       # Principal coordinates of the first two axes.
       coordinates = lapply(1:2, function(k) numbers(fit$rowcoord[, k] * fit$sv[k]))) }
write_reference("count-tables", "ca",
  smoke = solve_of(smoke), author = solve_of(as.matrix(author)), hair = solve_of(hair),
  smokeSupplementary = solve_of(smoke, 2), authorSupplementary = solve_of(as.matrix(author), 3))
