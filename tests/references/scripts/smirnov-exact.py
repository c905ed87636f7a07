"""Exact two-sample Smirnov p of the cats' heart weights (R package MASS), by counting paths in whole numbers.

/usr/bin/python3 tests/references/scripts/smirnov-exact.py > tests/references/smirnov-exact.json
"""
import datetime, json, math, pathlib, platform
from fractions import Fraction
data = json.loads((pathlib.Path(__file__).parent.parent / "rank-tests.json").read_text())["twoSample"]["cats"]
x, y = data["first"], data["second"]
n, m = len(x), len(y)
pooled = sorted(x + y)
check = [i == n + m - 1 or pooled[i] != pooled[i + 1] for i in range(n + m)]
gaps = [abs(Fraction(sum(v <= t for v in x), n) - Fraction(sum(v <= t for v in y), m)) for t in set(pooled)]
d = max(gaps)
inside = [[0] * (m + 1) for _ in range(n + 1)]
for i in range(n + 1):
    for j in range(m + 1):
        if i + j == 0: inside[i][j] = 1; continue
        if check[i + j - 1] and abs(Fraction(i, n) - Fraction(j, m)) >= d: continue
        inside[i][j] = (inside[i - 1][j] if i else 0) + (inside[i][j - 1] if j else 0)
p = 1 - Fraction(inside[n][m], math.comb(n + m, n))
print(json.dumps({"tool": "Python fractions", "version": platform.python_version(),
  "command": "/usr/bin/python3 tests/references/scripts/smirnov-exact.py > tests/references/smirnov-exact.json",
  "date": str(datetime.date.today()), "statistic": float(d), "p": float(p)}, indent=1))
