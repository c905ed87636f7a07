# The chance that two rows of counts, their items dealt between them, are as unlike in their shares as they are, summed
# over all ways to deal (base R: expand.grid and lchoose).
# Rscript tests/references/scripts/same-source.R > tests/references/same-source.json
unlike <- function(x, y) sum(abs(x / sum(x) - y / sum(y)))
chance <- function(counts) {
  whole <- colSums(counts)
  n <- sum(counts[1, ])
  ways <- as.matrix(expand.grid(lapply(whole, function(k) 0:k)))
  ways <- ways[rowSums(ways) == n, , drop = FALSE]
  p <- exp(rowSums(matrix(lchoose(rep(whole, each = nrow(ways)), ways), nrow(ways))) - lchoose(sum(whole), n))
  far <- apply(ways, 1, function(x) unlike(x, whole - x))
  sum(p[far >= unlike(counts[1, ], counts[2, ]) - 1e-9])
}
tables <- list(
  "Titanic, children by class: survived, did not" = rbind(apply(Titanic[1:3, , "Child", "Yes"], 1, sum), apply(Titanic[1:3, , "Child", "No"], 1, sum)),
  "mtcars, gears: automatic, manual" = table(mtcars$am, mtcars$gear),
  "mtcars, cylinders: automatic, manual" = table(mtcars$am, mtcars$cyl),
  "infert, education: 12 cases, 30 others in order" = table(rep(1:2, c(12, 30)), infert$education[1:42]),
  "HairEyeColor, men with black or brown hair: green eyes, blue eyes" = rbind(HairEyeColor[1:2, "Green", "Male"], HairEyeColor[1:2, "Blue", "Male"]),
  "iris, sepals over 6 cm: setosa, virginica" = table(iris$Species, iris$Sepal.Length > 6)[c(1, 3), ]
)
rows <- mapply(function(name, counts) sprintf(
  '    { "data": "R datasets, %s", "table": [%s], "p": %s }', name,
  paste(apply(counts, 1, function(row) sprintf("[%s]", paste(row, collapse = ", "))), collapse = ", "),
  formatC(chance(counts), digits = 12, format = "g")), names(tables), tables)
cat(sprintf('{\n  "tool": "R, enumeration",\n  "version": "%s",\n  "command": "Rscript tests/references/scripts/same-source.R > tests/references/same-source.json",\n  "date": "%s",\n  "tables": [\n%s\n  ]\n}\n',
  paste0(R.version$major, ".", R.version$minor), Sys.Date(), paste(rows, collapse = ",\n")))
