# Linear mixed models with random intercepts by lme4 (nlme as a second opinion) on data that R packages carry.
# The optimum of lme4 is polished by nlminb on its own deviance, for its stopping rule is coarser than the comparison.
# Rscript tests/references/scripts/mixed-models.R > tests/references/mixed-models.json
suppressMessages({ library(jsonlite); library(lme4); library(nlme) })
data(Penicillin, package = "lme4"); data(Pastes, package = "lme4"); data(sleepstudy, package = "lme4"); data(Dyestuff2, package = "lme4")
o <- as.data.frame(nlme::Orthodont); o$Subject <- factor(as.character(o$Subject))
s <- sleepstudy[-c(3, 4, 5, 17, 18, 33, 71:79, 100, 131, 132, 133, 150), ]; s$Subject <- factor(s$Subject)
Pastes$cask <- factor(paste(Pastes$batch, Pastes$cask))
cases <- list(
  orthodont = list(f = distance ~ age + Sex + (1 | Subject), d = o, g = "Subject", nlme = list(distance ~ age + Sex, ~ 1 | Subject)),
  penicillin = list(f = diameter ~ 1 + (1 | plate) + (1 | sample), d = Penicillin, g = c("plate", "sample")),
  pastes = list(f = strength ~ 1 + (1 | cask) + (1 | batch), d = Pastes, g = c("cask", "batch")),
  sleepUnbalanced = list(f = Reaction ~ Days + (1 | Subject), d = s, g = "Subject", nlme = list(Reaction ~ Days, ~ 1 | Subject)),
  dyestuffNothing = list(f = Yield ~ 1 + (1 | Batch), d = Dyestuff2, g = "Batch"))
polish <- function(f, d, REML) {
  m <- lmer(f, d, REML = REML, control = lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10, maxfun = 1e5)))
  dev <- lmer(f, d, REML = REML, devFunOnly = TRUE)
  t <- getME(m, "theta")
  # Newton on central differences of the deviance in logarithms: curvature is enough for 1e-8.
  if (all(t > 1e-4)) for (i in 1:6) {
    h <- 1e-3; k <- length(t); e <- diag(k) * h; l <- log(t); g <- numeric(k); H <- matrix(0, k, k)
    fn <- function(l) dev(exp(l))
    d1 <- function(l, j, h) (fn(l + e[j, ] / 1e-3 * h) - fn(l - e[j, ] / 1e-3 * h)) / (2 * h)
    for (j in 1:k) g[j] <- (4 * d1(l, j, h) - d1(l, j, 2 * h)) / 3
    for (a in 1:k) for (b in 1:k) H[a, b] <- (fn(l + e[a, ] + e[b, ]) - fn(l + e[a, ] - e[b, ]) - fn(l - e[a, ] + e[b, ]) + fn(l - e[a, ] - e[b, ])) / (4 * h^2)
    t <- as.numeric(exp(l - solve(H, g)))
  }
  dev(t)
  mkMerMod(environment(dev), list(par = t, fval = dev(t), conv = 0, message = ""), lFormula(f, d, REML = REML)$reTrms, fr = lFormula(f, d, REML = REML)$fr)
}
fit <- function(case, REML) {
  m <- polish(case$f, case$d, REML)
  v <- as.data.frame(VarCorr(m)); r <- ranef(m, condVar = FALSE)
  Z <- t(as.matrix(getME(m, "Zt"))); X <- getME(m, "X"); L <- as.matrix(getME(m, "Lambda"))
  ZL <- Z %*% L; M <- rbind(cbind(t(ZL) %*% ZL + diag(ncol(ZL)), t(ZL) %*% X), cbind(t(X) %*% ZL, t(X) %*% X))
  # The predicted mean of the first level of each factor at the fixed part of its first reading, with its error.
  flist <- getME(m, "flist"); co <- solve(M) * sigma(m)^2
  pred <- lapply(case$g, function(g) {
    lev <- levels(case$d[[g]])[1]; row <- which(case$d[[g]] == lev)[1]; a <- c(rep(0, ncol(ZL)), X[row, ])
    col <- which(colnames(Z) == lev & rep(names(flist), sapply(flist, nlevels)) == g)
    a[seq_len(ncol(ZL))] <- L[col, ]
    list(x = unname(X[row, ]), estimate = sum(X[row, ] * fixef(m)) + r[[g]][lev, 1], se = sqrt(c(t(a) %*% co %*% a))) })
  list(fixed = unname(fixef(m)), se = unname(sqrt(diag(as.matrix(vcov(m))))), covariance = unname(as.matrix(vcov(m))),
       variances = sapply(case$g, function(g) v$vcov[v$grp == g], USE.NAMES = FALSE), residual = sigma(m)^2,
       logLikelihood = as.numeric(logLik(m)), intercepts = lapply(case$g, function(g) r[[g]][[1]]), predicted = pred)
}
second <- function(case) {
  if (is.null(case$nlme)) return(NULL)
  m <- lme(case$nlme[[1]], random = case$nlme[[2]], data = case$d, control = lmeControl(msTol = 1e-12, tolerance = 1e-12, opt = "optim", reltol = 1e-14))
  list(fixed = unname(fixef(m)), se = unname(sqrt(diag(vcov(m)))), variances = I(as.numeric(VarCorr(m)[1, 1])), residual = m$sigma^2, logLikelihood = as.numeric(logLik(m)))
}
l <- lm(distance ~ age + Sex, o)
out <- lapply(cases, function(case) {
  X <- lFormula(case$f, case$d)$X
  list(y = case$d[[all.vars(case$f)[1]]], fixed = lapply(seq_len(ncol(X)), function(j) unname(X[, j])),
       groups = lapply(case$g, function(g) as.integer(case$d[[g]]) - 1L), REML = fit(case, TRUE), ML = fit(case, FALSE), nlme = second(case)) })
cat(toJSON(list(tool = "R lme4 and nlme", version = paste0(R.version.string, "; lme4 ", packageVersion("lme4"), "; nlme ", packageVersion("nlme")),
  command = "Rscript tests/references/scripts/mixed-models.R > tests/references/mixed-models.json", date = as.character(Sys.Date()),
  data = "lme4: Penicillin, Pastes, sleepstudy without 20 readings, Dyestuff2; nlme: Orthodont", leastSquares = list(fixed = unname(coef(l)), se = unname(sqrt(diag(vcov(l)))), residual = sigma(l)^2, logLikelihood = as.numeric(logLik(l, REML = TRUE))), cases = out), auto_unbox = TRUE, digits = I(15), null = "null"))
