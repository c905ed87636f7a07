# n times the variance of chi-squared over n in samples, by numerical derivatives over the cells' shares (base R).
# Rscript tests/references/scripts/association-spread.R > tests/references/association-spread.json
phi <- function(p, d) {
  P <- matrix(p, d[1], d[2])
  sum(P^2 / outer(rowSums(P), colSums(P))) - 1
}
spread <- function(counts) {
  p <- as.vector(counts) / sum(counts)
  slope <- sapply(seq_along(p), function(i) {
    step <- replace(numeric(length(p)), i, 1e-5)
    (phi(p + step, dim(counts)) - phi(p - step, dim(counts))) / 2e-5
  })
  sum(p * slope^2) - sum(p * slope)^2
}
tables <- list(
  "HairEyeColor, both sexes" = apply(HairEyeColor, c(1, 2), sum),
  "UCBAdmissions, department A" = UCBAdmissions[, , 1],
  "Titanic, class by survival" = apply(Titanic, c(1, 4), sum),
  "warpbreaks, wool by tension, breaks" = xtabs(breaks ~ wool + tension, warpbreaks),
  "occupationalStatus" = unclass(occupationalStatus)
)
rows <- mapply(function(name, counts) sprintf(
  '    { "data": "R datasets, %s", "table": [%s], "spread": %s }', name,
  paste(apply(counts, 1, function(row) sprintf("[%s]", paste(row, collapse = ", "))), collapse = ", "),
  formatC(spread(counts), digits = 9, format = "g")), names(tables), tables)
cat(sprintf('{\n  "tool": "R, numerical derivatives",\n  "version": "%s",\n  "command": "Rscript tests/references/scripts/association-spread.R > tests/references/association-spread.json",\n  "date": "%s",\n  "tables": [\n%s\n  ]\n}\n',
  paste0(R.version$major, ".", R.version$minor), Sys.Date(), paste(rows, collapse = ",\n")))
