# PERT distributions and sums of them. Quantiles of sums by convolving the densities on a fine grid (trapezium weights).
import json
import numpy as np
from scipy.stats import beta, norm


def pert(low, likely, high):
    w = high - low
    return beta(1 + 4 * (likely - low) / w, 1 + 4 * (high - likely) / w, loc=low, scale=w)


STEP = 0.001


def masses(d, lo, hi):
    edges = np.arange(lo, hi + STEP / 2, STEP)
    return np.diff(d.cdf(edges))


def quantile_of_sum(parts, p):
    total, start = None, 0.0
    for d, lo, hi in parts:
        m = masses(d, lo, hi)
        total = m if total is None else np.convolve(total, m)
        start += lo + STEP / 2
    return float(np.interp(p, np.cumsum(total) - total / 2, start + STEP * np.arange(len(total))))


one = [(9, 12, 20), (9, 10, 11), (0, 0, 5), (-30, 0, 50)]
answer = {"one": []}
for low, likely, high in one:
    d = pert(low, likely, high)
    answer["one"].append({"low": low, "likely": likely, "high": high, "mean": d.mean(), "dev": d.std(),
                          "p50": d.ppf(0.5), "p80": d.ppf(0.8), "p95": d.ppf(0.95)})

three = [(pert(*a), a[0], a[2]) for a in [(9, 12, 20), (2, 3, 7), (5, 5.5, 6)]]
answer["three"] = {"p50": quantile_of_sum(three, 0.5), "p80": quantile_of_sum(three, 0.8)}

# the first PERT and a second drawn with it (one key, twice the size), beside a normal of dev 2 and an even part 0..4
shared = [(pert(27, 36, 60), 27, 60), (norm(10, 2), -4, 24)]
shared = shared + [(beta(1, 1, loc=0, scale=4), 0, 4)]
answer["shared"] = {"p50": quantile_of_sum(shared, 0.5), "p80": quantile_of_sum(shared, 0.8)}
print(json.dumps(answer))
