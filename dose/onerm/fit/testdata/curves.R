# Weighted nonlinear fits of load-repetition curves by nls of R, as a second opinion on package fit.
# Run in this folder: Rscript curves.R. Reads curves-points.csv, writes curves.csv.
# The loads are invented: drawn by hand around a curve, no person's.
points <- read.csv("curves-points.csv", comment.char = "#")
forms <- list(
  "hyperbola" = list(log(load_kg) ~ log(M) + log(1 / (1 + (reps - 1) / k)), c("M", "k")),
  "line" = list(log(load_kg) ~ log(M) + log(1 - (reps - 1) / k), c("M", "k")),
  "power" = list(log(load_kg) ~ log(M) - k * log(reps), c("M", "k")),
  "exponential-floor" = list(log(load_kg) ~ log(M) + log(a + (1 - a) * exp(-k * (reps - 1))), c("M", "k", "a")),
  "hyperbola-floor" = list(log(load_kg) ~ log(M) + log(a + (1 - a) / (1 + (reps - 1) / k)), c("M", "k", "a"))
)
starts <- list(
  "hyperbola" = list(M = 40, k = 30), "line" = list(M = 40, k = 40), "power" = list(M = 40, k = 0.1),
  "exponential-floor" = list(M = 40, k = 0.07, a = 0.5), "hyperbola-floor" = list(M = 40, k = 10, a = 0.3)
)
rows <- list()
for (form in names(forms)) {
  for (case in unique(points$case)) {
    p <- points[points$case == case, ]
    fit <- nls(forms[[form]][[1]], data = p, start = starts[[form]], weights = 1 / p$sd^2,
               control = nls.control(tol = 1e-7, maxiter = 500, nDcentral = TRUE))
    s <- summary(fit)
    # prediction interval for a further set of 3, on the log scale, by the gradient that nls reports
    at <- as.list(coef(fit))
    g <- numericDeriv(bquote(.(forms[[form]][[1]][[3]])), forms[[form]][[2]], rho = list2env(c(at, list(reps = 3))), central = TRUE)
    noise2 <- s$sigma^2 * mean(p$sd^2)
    se3 <- sqrt(as.numeric(attr(g, "gradient") %*% vcov(fit) %*% t(attr(g, "gradient"))) + noise2)
    half <- qt(0.95, df.residual(fit)) * se3
    low <- exp(as.numeric(g) - half)
    high <- exp(as.numeric(g) + half)
    est <- coef(s)
    for (name in forms[[form]][[2]]) {
      rows[[length(rows) + 1]] <- data.frame(form = form, case = case, parameter = name,
        estimate = sprintf("%.10g", est[name, 1]), se = sprintf("%.10g", est[name, 2]),
        freedom = df.residual(fit), low3 = sprintf("%.8g", low), high3 = sprintf("%.8g", high))
    }
  }
}
header <- paste0("# Made by curves.R with nls of ", R.version.string, " from curves-points.csv. Do not edit.\n",
  "# se: standard error of the parameter; low3, high3: 90 % prediction interval in kg for a further set of 3 repetitions.\n")
cat(header, file = "curves.csv")
suppressWarnings(write.table(do.call(rbind, rows), "curves.csv", append = TRUE, sep = ",", quote = FALSE, row.names = FALSE))
