# BCa limits by the package boot, on data that R carries; a large R so that chance is small.
# Rscript tests/references/scripts/bootstrap.R > tests/references/bootstrap.json
suppressMessages({ library(jsonlite); library(boot) })
set.seed(1)
cases <- list(
  heights = list(x = trees$Height, f = mean, name = "mean"),
  distances = list(x = cars$dist, f = mean, name = "mean"),
  ozone = list(x = airquality$Ozone[!is.na(airquality$Ozone)], f = var, name = "variance"),
  precip = list(x = as.numeric(precip), f = median, name = "median")
)
out <- lapply(cases, function(case) {
  b <- boot(case$x, function(d, i) case$f(d[i]), R = 50000)
  L <- empinf(b, type = "jack")
  ci <- boot.ci(b, type = "bca", L = L)$bca[4:5]
  list(x = case$x, statistic = case$name, low = ci[1], high = ci[2], sd = sd(b$t), acceleration = sum(L^3) / (6 * sum(L^2)^1.5))
})
cat(toJSON(list(tool = "R boot", version = paste0(R.version.string, "; boot ", packageVersion("boot")),
  command = "Rscript tests/references/scripts/bootstrap.R > tests/references/bootstrap.json", date = as.character(Sys.Date()),
  cases = out), auto_unbox = TRUE, digits = I(17), pretty = TRUE))
