"""Reference values for grouping from scipy and scikit-learn.

Run from the project root: /usr/bin/python3 tests/references/scripts/grouping-python.py > tests/references/grouping-python.json
"""
import datetime
import json
import platform

import numpy as np
import scipy
import sklearn
from scipy.cluster.hierarchy import cophenet, fcluster, linkage
from scipy.spatial.distance import pdist
from sklearn import datasets, metrics

METHODS = ["single", "complete", "average", "weighted", "ward", "centroid", "median"]


def trees(points):
    d = pdist(points)
    out = {}
    for method in METHODS:
        z = linkage(d, method)
        entry = {"merges": z.tolist(), "correlation": float(cophenet(z, d)[0])}
        if method not in ("centroid", "median"):
            entry["cuts"] = {str(k): fcluster(z, k, "maxclust").tolist() for k in (2, 3, 4)}
        out[method] = entry
    return out


def agreement(a, b):
    h, c, v = metrics.homogeneity_completeness_v_measure(a, b)
    return {
        "first": list(map(int, a)), "second": list(map(int, b)),
        "rand": metrics.rand_score(a, b), "adjustedRand": metrics.adjusted_rand_score(a, b),
        "mutualInformation": metrics.mutual_info_score(a, b),
        "adjustedMutualInformation": metrics.adjusted_mutual_info_score(a, b),
        "homogeneity": h, "completeness": c, "vMeasure": v,
    }


rng = np.random.default_rng(5)
free = np.round(rng.normal(size=(80, 4)), 6)
tied = rng.integers(0, 3, size=(40, 3)).astype(float)  # many equal distances: fixes the tie rule
iris = datasets.load_iris()

cases = [
    ([0, 0, 1, 1, 2, 2], [0, 0, 0, 0, 1, 1]),
    ([1, 1, 2, 2, 3, 3], [1, 1, 1, 1, 2, 2]),
    ([1, 2, 1], [2, 2, 1]),
    ([0, 0, 0, 0], [0, 1, 2, 3]),
    ([0, 0, 0], [0, 0, 0]),
    ([0, 1, 2], [0, 1, 2]),
    ([0, 0, 1, 1, 2, 2, 2, 2, 2, 2][:10], [0, 1, 1, 2, 0, 2, 2, 2, 2, 2]),
    (iris.target.tolist(), rng.integers(0, 3, 150).tolist()),
    (iris.target.tolist(), np.where(iris.data[:, 2] < 2, 0, np.where(iris.data[:, 3] < 1.7, 1, 2)).tolist()),
    (rng.integers(0, 5, 300).tolist(), rng.integers(0, 9, 300).tolist()),
]


def indices(points, labels):
    return {
        "membership": list(map(int, labels)),
        "silhouette": metrics.silhouette_score(points, labels),
        "calinskiHarabasz": metrics.calinski_harabasz_score(points, labels),
        "daviesBouldin": metrics.davies_bouldin_score(points, labels),
    }


print(json.dumps({
    "tool": "scipy " + scipy.__version__ + ", scikit-learn " + sklearn.__version__ + ", numpy " + np.__version__,
    "version": "Python " + platform.python_version(),
    "command": "/usr/bin/python3 tests/references/scripts/grouping-python.py > tests/references/grouping-python.json",
    "date": datetime.date.today().isoformat(),
    "free": {"points": free.tolist(), "trees": trees(free)},
    "tied": {"points": tied.tolist(), "trees": trees(tied)},
    "agreement": [agreement(a, b) for a, b in cases],
    "indices": {"points": iris.data.tolist(), "cases": [
        indices(iris.data, iris.target),
        indices(iris.data, fcluster(linkage(pdist(iris.data), "average"), 4, "maxclust")),
    ]},
}))
