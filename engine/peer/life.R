# Lives on standard input as CSV (set, hours, failed 0/1); out come lines: fit, survival, replacement.
suppressPackageStartupMessages(library(survival))
all <- read.csv(file("stdin"))
say <- function(kind, set, ...) cat(kind, set, sprintf("%.17g", c(...)), sep = ",", fill = 1000)
control <- survreg.control(rel.tolerance = 1e-13, maxiter = 200, toler.chol = 1e-14)
for (set in unique(all$set)) {
  lives <- all[all$set == set, ]
  fit <- survreg(Surv(hours, failed) ~ 1, data = lives, dist = "weibull", control = control)
  # Of the location ln(scale) and of ln(1/shape).
  v <- fit$var
  by <- predict(fit, newdata = lives[1, ], type = "uquantile", p = c(0.1, 0.5, 0.9), se.fit = TRUE)
  shape <- 1 / fit$scale
  scale <- exp(unname(coef(fit)))
  say("fit", set, shape, scale, fit$loglik[1], v[1, 1], v[2, 2], v[1, 2])
  for (i in 1:3) say("failed", set, c(0.1, 0.5, 0.9)[i], by$fit[i], by$se.fit[i])
  km <- survfit(Surv(hours, failed) ~ 1, data = lives, conf.type = "log-log", conf.int = 0.9)
  for (i in which(km$n.event > 0)) say("survival", set, km$time[i], km$surv[i], km$lower[i], km$upper[i])
  if (shape > 1.2) {
    survival <- function(t) exp(-(t / scale)^shape)
    cost <- function(t) (1 * survival(t) + 5 * (1 - survival(t))) / integrate(survival, 0, t, rel.tol = 1e-12)$value
    best <- optimize(cost, c(scale / 100, 3 * scale), tol = 1e-9)
    say("replacement", set, best$minimum, best$objective)
  }
}
