# Cohen's kappa with its large-sample variance: package psych.
# Rscript tests/references/scripts/kappa.R > tests/references/kappa.json
suppressMessages({ library(jsonlite); library(psych) })
one <- function(m) { k <- cohen.kappa(m, alpha = .05); list(counts = unname(m), kappa = k$kappa, variance = k$var.kappa) }
tables <- list(one(matrix(c(88, 14, 18, 10, 40, 10, 2, 6, 12), 3)), one(matrix(c(44, 5, 7, 30), 2)), one(matrix(c(3, 9, 8, 2), 2)), one(matrix(c(20, 1, 0, 2, 15, 3, 0, 4, 11), 3)))
cat(toJSON(list(tool = "R (psych)", version = paste0(R.version.string, "; psych ", packageVersion("psych")),
  command = "Rscript tests/references/scripts/kappa.R > tests/references/kappa.json", date = as.character(Sys.Date()), tables = tables), auto_unbox = TRUE, digits = I(17)))
