"""Merges of 1,200 records from scipy. The records are not stored: both sides make them by the same exact arithmetic.

Run from the project root: /usr/bin/python3 tests/references/scripts/grouping-large.py > tests/references/grouping-large.json
"""
import datetime
import json
import platform

import numpy as np
import scipy
from scipy.cluster.hierarchy import linkage
from scipy.spatial.distance import pdist

i = np.arange(1200, dtype=float)
points = np.column_stack([np.mod(i ** p * np.sqrt(k), 1.0) for p, k in ((1, 2.0), (2, 3.0), (3, 5.0))])
trees = {}
for method in ("complete", "average", "weighted", "ward"):
    tree = linkage(pdist(points), method)
    trees[method] = {
        "first": tree[:, 0].astype(int).tolist(),
        "second": tree[:, 1].astype(int).tolist(),
        "everyHundredthHeight": tree[::100, 2].tolist(),
    }
print(json.dumps({
    "tool": "scipy " + scipy.__version__ + ", numpy " + np.__version__,
    "version": "Python " + platform.python_version(),
    "command": "python tests/references/scripts/grouping-large.py > tests/references/grouping-large.json",
    "date": datetime.date.today().isoformat(),
    "trees": trees,
}))
