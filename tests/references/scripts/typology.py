"""Critical bandwidths and bits of held-out records: numpy, scipy and scikit-learn.

/usr/bin/python3 tests/references/scripts/typology.py > tests/references/typology.json
"""
import datetime, json
import numpy as np, scipy, sklearn
from scipy.stats import norm
from sklearn.datasets import load_iris
from sklearn.model_selection import LeaveOneGroupOut
from sklearn.naive_bayes import CategoricalNB


def peaks(x, h, points=2**13):
    grid = np.linspace(x.min() - 3 * h, x.max() + 3 * h, points)
    density = np.zeros(points)
    for v in x:
        near = slice(*np.searchsorted(grid, [v - 9 * h, v + 9 * h]))
        density[near] += np.exp(-0.5 * ((grid[near] - v) / h) ** 2)
    rise = np.sign(np.diff(density))
    rise = rise[rise != 0]
    at = np.nonzero((rise[:-1] > 0) & (rise[1:] < 0))[0]
    low = np.nonzero((rise[:-1] < 0) & (rise[1:] > 0))[0]
    return len(at), [float(grid[i + 1]) for i in low]


def critical(x, k):
    low, high = (x.max() - x.min()) / 1000, x.max() - x.min()
    while high / low > 1.00001:
        middle = (low * high) ** 0.5
        if peaks(x, middle)[0] > k:
            low = middle
        else:
            high = middle
    return high


iris = load_iris()
sets = {
    "petal length": iris.data[:, 2],
    "sepal length": iris.data[:, 0],
    "petal width of two species": iris.data[50:, 3],
}
rng = np.random.default_rng(5)
sets["two far heaps"] = np.concatenate([rng.normal(0, 1, 40), rng.normal(6, 1, 30)])
bandwidths = []
for name, x in sets.items():
    two = critical(x, 2)
    bandwidths.append({"name": name, "x": x.tolist(), "one": critical(x, 1), "two": two, "three": critical(x, 3),
                       "valleys": peaks(x, two * 1.0001)[1]})

fold = np.arange(150) % 7
species = iris.target
kinds = np.floor(iris.data[:, 1] * 2).astype(int) - 4
kind_bits = number_bits = 0.0
values = np.log(iris.data[:, 2])
for learn, left in LeaveOneGroupOut().split(values, species, fold):
    model = CategoricalNB(alpha=0.5, min_categories=5, fit_prior=False).fit(kinds[learn, None], species[learn])
    for i in left:
        kind_bits -= model.feature_log_prob_[0][species[i], kinds[i]] / np.log(2)
    pooled = sum(values[learn][species[learn] == g].var() * (species[learn] == g).sum() for g in range(3)) / (len(learn) - 3)
    for i in left:
        own = values[learn][species[learn] == species[i]]
        number_bits -= norm.logpdf(values[i], own.mean(), np.sqrt(pooled * (1 + 1 / len(own)))) / np.log(2)

print(json.dumps({
    "tool": "numpy, scipy, scikit-learn", "version": f"numpy {np.__version__}, scipy {scipy.__version__}, scikit-learn {sklearn.__version__}",
    "command": "/usr/bin/python3 tests/references/scripts/typology.py > tests/references/typology.json",
    "date": str(datetime.date.today()), "bandwidths": bandwidths,
    "bits": {"fold": fold.tolist(), "groups": species.tolist(), "kinds": kinds.tolist(), "kindBits": kind_bits,
             "values": values.tolist(), "numberBits": number_bits},
}))
