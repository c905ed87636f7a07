# Families of p values adjusted by R's own p.adjust.
# Rscript tests/references/scripts/adjusted-p.R > tests/references/adjusted-p.json
g <- function(x) paste(formatC(x, digits = 17, format = "g"), collapse = ", ")
families <- list(
  c(0.01, 0.02, 0.03, 0.04, 0.05),
  c(0.04, 0.001, 0.2, 0.04, 0.9, 0.013, 1),
  c(0.5, 0.5, 0.5),
  c(1e-12, 0.049, 0.8, 1e-5, 0.0499, 0.3, 0.3, 2e-4),
  0.03
)
rows <- sapply(families, function(p) sprintf(
  '    { "p": [%s], "holm": [%s], "benjamini-hochberg": [%s], "bonferroni": [%s] }',
  g(p), g(p.adjust(p, "holm")), g(p.adjust(p, "BH")), g(p.adjust(p, "bonferroni"))))
cat(sprintf('{\n  "tool": "R stats p.adjust",\n  "version": "%s",\n  "command": "Rscript tests/references/scripts/adjusted-p.R > tests/references/adjusted-p.json",\n  "date": "%s",\n  "families": [\n%s\n  ]\n}\n',
  paste0(R.version$major, ".", R.version$minor), Sys.Date(), paste(rows, collapse = ",\n")))
