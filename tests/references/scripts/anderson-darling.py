"""Scholz & Stephens' worked example with scipy: standardised statistic and the mean and sd that make it.

/usr/bin/python3 tests/references/scripts/anderson-darling.py > tests/references/anderson-darling.json
"""
import datetime, json, warnings
import numpy as np, scipy
from scipy import stats
warnings.simplefilter("ignore")
groups = [[38.7, 41.5, 43.8, 44.5, 45.5, 46.0, 47.7, 58.0],
          [39.2, 39.3, 39.7, 41.4, 41.8, 42.9, 43.3, 45.8],
          [34.0, 35.0, 39.0, 40.0, 43.0, 43.0, 44.0, 45.0],
          [34.0, 34.8, 34.8, 35.4, 37.2, 37.8, 41.2, 42.8]]
captured = {}
original = stats._morestats._anderson_ksamp_midrank
def spy(*args):
    captured["raw"] = original(*args); return captured["raw"]
stats._morestats._anderson_ksamp_midrank = spy
result = stats.anderson_ksamp([np.array(g) for g in groups], midrank=True)
k = len(groups)
mean = k - 1
sd = (captured["raw"] - mean) / result.statistic
print(json.dumps({"tool": "scipy", "version": scipy.__version__,
  "command": "/usr/bin/python3 tests/references/scripts/anderson-darling.py > tests/references/anderson-darling.json",
  "date": str(datetime.date.today()), "raw": captured["raw"], "mean": mean, "sd": sd, "standardised": result.statistic}, indent=1))
