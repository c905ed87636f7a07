"""Reference values for density-based grouping from scikit-learn's HDBSCAN (1.3 or later) on a precomputed matrix.

Run from the project root, in an environment with scikit-learn 1.6.1:
python tests/references/scripts/grouping-density.py > tests/references/grouping-density.json
"""
import datetime
import json
import platform

import numpy as np
import sklearn
from scipy.spatial.distance import pdist, squareform
from sklearn import datasets
from sklearn.cluster import HDBSCAN

rng = np.random.default_rng(9)
blobs = np.vstack([
    rng.normal((0, 0), 0.5, (40, 2)), rng.normal((5, 5), 0.7, (60, 2)), rng.normal((0, 6), 0.4, (25, 2)),
    rng.uniform(-4, 10, (25, 2)),
])
moons = datasets.make_moons(120, noise=0.07, random_state=4)[0]
uniform = rng.uniform(0, 1, (80, 3))
out = []
for name, points in (("blobs", blobs), ("moons", moons), ("uniform", uniform)):
    points = np.round(points, 6)
    matrix = squareform(pdist(points))
    for size, samples in ((5, 5), (10, 5), (15, 10), (8, 1)):
        fit = HDBSCAN(min_cluster_size=size, min_samples=samples, metric="precomputed", copy=True).fit(matrix)
        out.append({
            "name": name, "points": points.tolist(), "smallestGroup": size, "neighbours": samples,
            "labels": fit.labels_.tolist(), "strength": fit.probabilities_.tolist(),
        })
print(json.dumps({
    "tool": "scikit-learn " + sklearn.__version__ + ", numpy " + np.__version__,
    "version": "Python " + platform.python_version(),
    "command": "python tests/references/scripts/grouping-density.py > tests/references/grouping-density.json",
    "date": datetime.date.today().isoformat(),
    "cases": out,
}))
