"""Counts of things with chances of their own, and quantiles of spans shared out evenly.

Run: python3 tests/references/scripts/time-counts.py > tests/references/time-counts.json
"""
import json
import sys

import numpy as np
import scipy
from scipy import optimize, stats

rng = np.random.default_rng(5)


def sums(sizes, chances):
    """Product of the generating polynomials, by numpy."""
    out = np.array([1.0])
    for size, chance in zip(sizes, chances):
        step = np.zeros(size + 1)
        step[0], step[size] = 1 - chance, step[size] + chance
        out = np.convolve(out, step)
    return out


def case(chances, level):
    found = stats.poisson_binom(chances)
    tail = (1 - level) / 2
    return {
        "chances": list(map(float, chances)),
        "level": level,
        "pmf": found.pmf(np.arange(len(chances) + 1)).tolist(),
        # Least count with more than the tail at or below it, greatest with more than the tail at or above it.
        "low": int(next(k for k in range(len(chances) + 1) if found.cdf(k) > tail + 1e-12)),
        "high": int(next(k for k in range(len(chances), -1, -1) if found.sf(k - 1) > tail + 1e-12)),
    }


def weighted(sizes, chances):
    return {"sizes": sizes, "chances": chances, "pmf": sums(sizes, chances).tolist()}


def spread(starts, ends, share):
    below = lambda at: np.mean([stats.uniform(a, b - a).cdf(at) for a, b in zip(starts, ends)]) - share
    return {
        "from": starts,
        "to": ends,
        "share": share,
        "at": float(optimize.brentq(below, min(starts), max(ends), xtol=1e-12, rtol=1e-14)),
    }


json.dump(
    {
        "tool": "scipy (stats.poisson_binom, optimize.brentq), numpy (convolve)",
        "version": f"scipy {scipy.__version__}, numpy {np.__version__}",
        "command": "python3 tests/references/scripts/time-counts.py > tests/references/time-counts.json",
        "date": "2026-11-30",
        "even": [
            case([0.5] * 4, 0.9),
            case([0.25, 0.5, 0.25], 0.95),
            case(rng.random(40).round(3), 0.95),
            case(rng.random(300).round(3), 0.8),
        ],
        "sized": [weighted([3, 1, 2], [0.5, 0.2, 0.9]), weighted([10, 7, 7, 1, 1], [0.1, 0.4, 0.4, 1.0, 0.0])],
        "spread": [
            spread([0.0, 0.0, 100.0], [100.0, 50.0, 300.0], 0.25),
            spread([-399.0, -149.0, 120.0], [-149.0, 120.0, 400.0], 0.5),
            spread([-399.0, -149.0, 120.0, -20.0], [-149.0, 120.0, 400.0, 30.0], 0.75),
        ],
    },
    sys.stdout,
)
