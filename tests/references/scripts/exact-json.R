# JSON with 17 significant digits: numbers(x) for a vector, write_reference() for the whole file.
suppressMessages(library(jsonlite))
options(warn = -1)
numbers <- function(x) structure(sprintf("[%s]", paste(ifelse(is.na(x), "null",
  formatC(as.numeric(x), digits = 17, format = "g")), collapse = ", ")), class = "json")
write_reference <- function(name, packages, ...) {
  head <- list(tool = paste("R", paste(packages, collapse = ", ")),
    version = paste(c(R.version.string, vapply(packages, function(p) paste(p, packageVersion(p)), "")), collapse = ", "),
    command = sprintf("Rscript tests/references/scripts/%s.R", name), date = as.character(Sys.Date()))
  cat(toJSON(c(head, list(...)), auto_unbox = TRUE, json_verbatim = TRUE, na = "null"), "\n", sep = "",
    file = sprintf("tests/references/%s.json", name))
}
