# Cochran-Mantel-Haenszel tests by R's own mantelhaen.test on tables that R carries.
# Rscript tests/references/scripts/mantel-haenszel.R > tests/references/mantel-haenszel.json
suppressMessages(library(jsonlite))
# Job satisfaction by income and gender: the worked example of ?mantelhaen.test (Agresti 2002, p. 288).
satisfaction <- as.table(array(c(1, 2, 0, 0, 3, 3, 1, 2, 11, 17, 8, 4, 2, 3, 5, 2, 1, 0, 0, 0, 1, 3, 0, 1, 2, 5, 7, 9, 1, 1, 3, 6), dim = c(4, 4, 2)))
tables <- list(admissions = UCBAdmissions, hair = HairEyeColor, titanic = margin.table(Titanic, c(1, 4, 2)), titanicAge = margin.table(Titanic, c(2, 4, 1)), satisfaction = satisfaction)
strata <- function(t) lapply(seq_len(dim(t)[3]), function(k) lapply(seq_len(dim(t)[1]), function(i) as.numeric(t[i, , k])))
out <- lapply(tables, function(t) {
  m <- mantelhaen.test(t, correct = FALSE); odds <- NULL
  if (all(dim(t)[1:2] == 2)) { c <- mantelhaen.test(t)
    odds <- list(estimate = unname(c$estimate), low = c$conf.int[1], high = c$conf.int[2], statistic = unname(c$statistic), p = c$p.value) }
  list(tables = strata(t), statistic = unname(m$statistic), df = unname(m$parameter), p = m$p.value, odds = odds) })
cat(toJSON(list(tool = "R stats mantelhaen.test", version = R.version.string,
  command = "Rscript tests/references/scripts/mantel-haenszel.R > tests/references/mantel-haenszel.json", date = as.character(Sys.Date()),
  cases = out), auto_unbox = TRUE, digits = I(17), null = "null"))
