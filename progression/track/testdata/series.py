"""series.py writes series.csv, series-days.csv, series-fit.csv, nile-fit.csv and sen.csv beside itself: a second opinion on package track by
statsmodels (BSD-3), which runs day by day over a grid with missing days. The values are invented: drawn by a
generator of random numbers written out below, no person's.

Run: python3 series.py"""
import csv, os
import numpy as np
import statsmodels, statsmodels.api as sm
from statsmodels.tsa.statespace.mlemodel import MLEModel

here = os.path.dirname(os.path.abspath(__file__))

def uniform(seed):
    s = seed
    while True:  # MMIX's generator of Knuth
        s = (6364136223846793005 * s + 1442695040888963407) % 2**64
        yield (s >> 11) / 2**53

KEEP = {"local level": None, "linear trend": 1.0, "damped trend": 0.99}
MODELS = [  # name, kind, level, slope, first slope (0: diffuse), day
    ("level", "local level", 0.0004, 0.0, 0.0, 0.002),
    ("trend", "linear trend", 0.0002, 1e-6, 0.0, 0.002),
    ("still line", "linear trend", 0.0, 0.0, 0.0, 0.002),
    ("damped", "damped trend", 0.0001, 1e-6, 0.0, 0.002),
    ("damped, known", "damped trend", 0.0001, 1e-6, 1.6e-5, 0.002),
]
GAPS = [0, 2, 2, 3, 4, 7, 7, 1, 2, 21, 3, 4, 3, 4, 3, 28, 5, 2, 7, 7, 14, 1, 1, 9]

class Given(MLEModel):
    """Given matrices and variances; the variance of a reading differs from day to day."""
    def __init__(self, y, kind, level, slope, first_slope, variances):
        k = 1 if kind == "local level" else 2
        super().__init__(y, k_states=k, k_posdef=k)
        self["selection"] = np.eye(k)
        self["design", 0, 0] = 1
        if k == 1:
            self["transition"] = np.eye(1); self["state_cov"] = np.array([[level]])
            self.ssm.initialize_diffuse()
        else:
            self["transition"] = np.array([[1, 1], [0, KEEP[kind]]]); self["state_cov"] = np.diag([level, slope])
            if first_slope == 0:
                self.ssm.initialize_diffuse()
            else:
                from statsmodels.tsa.statespace.initialization import Initialization
                init = Initialization(2)
                init.set(0, "diffuse")
                init.set(1, "known", constant=[0], stationary_cov=[[first_slope]])
                self.ssm.initialization = init
        self["obs_cov"] = np.array(variances).reshape(1, 1, -1)
        self.ssm.loglikelihood_burn = 0

draw = uniform(20261130)
days = list(np.cumsum(GAPS))
own = [round(0.0005 + 0.002 * next(draw), 6) for _ in days]
values = [round(3 + 0.3 * (1 - 0.985 ** d) + 0.15 * (next(draw) - 0.5), 6) for d in days]
with open(os.path.join(here, "series.csv"), "w", newline="") as f:
    f.write("# Invented readings: day from the first, value, variance of its own. Written by series.py.\n")
    w = csv.writer(f, lineterminator="\n"); w.writerow(["day", "value", "variance"]); w.writerows(zip(days, values, own))

grid = np.full(days[-1] + 1, np.nan)
grid[days] = values
out = []
likelihoods = []
for name, kind, level, slope, first_slope, day in MODELS:
    variances = np.full(len(grid), day)
    variances[days] += own
    m = Given(grid, kind, level, slope, first_slope, variances)
    r = m.ssm.smooth()
    likelihoods.append([name, kind, level, slope, KEEP[kind] if kind == "damped trend" else 0, first_slope, day, repr(float(r.llf_obs.sum()))])
    k = 1 if kind == "local level" else 2
    for t in range(len(grid)):
        f, s, P, V = r.filtered_state[:, t], r.smoothed_state[:, t], r.filtered_state_cov[:, :, t], r.smoothed_state_cov[:, :, t]
        z = lambda x: repr(float(x))
        known = t >= days[1] or k == 1 or first_slope > 0
        out.append([name, t, z(f[0]) if known else "", z(f[1]) if k == 2 and known else "", z(P[0, 0]) if known else "", z(s[0]), z(s[1]) if k == 2 else "",
                    z(V[0, 0]), z(V[0, 1]) if k == 2 else "", z(V[1, 1]) if k == 2 else ""])
with open(os.path.join(here, "series-days.csv"), "w", newline="") as f:
    f.write(f"# Filter and exact diffuse smoother of statsmodels {statsmodels.__version__} on series.csv, every day of the grid. Written by series.py.\n")
    w = csv.writer(f, lineterminator="\n")
    w.writerow(["model", "day", "filtered_level", "filtered_slope", "filtered_level_var", "level", "slope", "level_var", "covariance", "slope_var"]); w.writerows(out)
with open(os.path.join(here, "series-fit.csv"), "w", newline="") as f:
    f.write(f"# Models of series-days.csv and their diffuse log-likelihood by statsmodels {statsmodels.__version__}, which gives every\n# reading its constant. Written by series.py.\n")
    w = csv.writer(f, lineterminator="\n")
    w.writerow(["model", "kind", "level", "slope", "keep", "first_slope", "day", "loglik_every_constant"]); w.writerows(likelihoods)

nile = sm.datasets.nile.load_pandas().data["volume"].to_numpy(float)
m = sm.tsa.UnobservedComponents(nile, level="llevel", use_exact_diffuse=True)
r = m.fit(disp=False, maxiter=2000, method="nm", xtol=1e-10, ftol=1e-14)
# Its standard errors are by differences too coarse for this surface: the curvature is
# worked out again with 40 digits (mpmath, BSD-3).
import mpmath
mpmath.mp.dps = 40

def loglik(noise, level):
    a, P, total = mpmath.mpf(nile[0]), noise, mpmath.mpf(0)
    for y in nile[1:]:
        P += level; F = P + noise; v = y - a
        total -= (mpmath.log(F) + v * v / F) / 2
        a += P / F * v; P = P * noise / F
    return total

x = [mpmath.mpf(float(p)) for p in r.params]
h = [p * mpmath.mpf("1e-8") for p in x]
def at(i, j, s, u):
    z = list(x); z[i] += s * h[i]; z[j] += u * h[j]
    return loglik(*z)
curve = np.array([[float((at(i, j, 1, 1) - at(i, j, 1, -1) - at(i, j, -1, 1) + at(i, j, -1, -1)) / (4 * h[i] * h[j])) for j in range(2)] for i in range(2)])
errors = np.sqrt(np.diag(np.linalg.inv(-curve)))
with open(os.path.join(here, "nile-fit.csv"), "w", newline="") as f:
    f.write(f"# Maximum likelihood of a local level on the Nile's flows by statsmodels {statsmodels.__version__}, exact diffuse start; standard errors from\n# the curvature there, differenced with 40 digits by mpmath {mpmath.__version__}. Written by series.py.\n")
    w = csv.writer(f, lineterminator="\n"); w.writerow(["noise", "level", "noise_se", "level_se", "loglik_every_constant"])
    w.writerow([repr(float(x)) for x in [*r.params, *errors, r.llf]])

import scipy
from scipy.stats import theilslopes
years = np.arange(1871, 1971)
epa = [10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15]
with open(os.path.join(here, "sen.csv"), "w", newline="") as f:
    f.write(f"# Sen's slope with its interval by scipy {scipy.__version__} (BSD-3), which takes whole ranks: the Nile's flows by year, and the\n# example of EPA QA/G-9S, p. 109. Written by series.py.\n")
    w = csv.writer(f, lineterminator="\n"); w.writerow(["series", "level", "slope", "low", "high"])
    for level in (0.9, 0.95):
        w.writerow(["nile", level, *[repr(float(x)) for x in (lambda r: (r[0], r[2], r[3]))(theilslopes(nile, years, level))]])
    w.writerow(["epa", 0.9, *[repr(float(x)) for x in (lambda r: (r[0], r[2], r[3]))(theilslopes(epa, np.arange(11), 0.9))]])
