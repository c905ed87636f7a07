"""Merges of the ikat traditions by scipy, on the Jaccard dissimilarity of scipy itself (see ikat.R for the data).

The one trait with an unknown reading is left out, so that scipy needs no rule for gaps.
Run from the project root: /usr/bin/python3 tests/references/scripts/ikat-merges.py > tests/references/ikat-merges.json
"""
import csv
import datetime
import json
import platform

import numpy as np
import scipy
from scipy.cluster.hierarchy import cophenet, linkage
from scipy.spatial.distance import pdist

with open("../shared/real/ikat-textiles/ikat_Data_S1.csv", newline="") as file:
    rows = list(csv.reader(file))[1:]
cells = np.array([row[1:] for row in rows])
whole = [j for j in range(cells.shape[1]) if "?" not in cells[:, j]]
present = cells[:, whole] == "1"
d = pdist(present, "jaccard")
trees = {}
for ours, theirs in {"average": "average", "complete": "complete", "single": "single", "mcquitty": "weighted", "ward": "ward"}.items():
    z = linkage(d, theirs)
    heights = z[:, 2]
    # Where two merges lie at one height their order is free: such a tree is stated by its cophenetic distances.
    trees[ours] = {"merges": z.tolist(), "tied": bool(np.any(np.diff(heights) < 1e-12)), "cophenetic": cophenet(z).tolist()}
print(json.dumps({
    "tool": f"scipy {scipy.__version__}", "version": f"Python {platform.python_version()}",
    "command": "/usr/bin/python3 tests/references/scripts/ikat-merges.py > tests/references/ikat-merges.json",
    "date": datetime.date.today().isoformat(), "columns": whole, "trees": trees,
}))
