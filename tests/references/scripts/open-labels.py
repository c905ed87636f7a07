"""Open tables with labels, and how often general-purpose classifiers find the label of a record left out.

Run from the project root (python3-sklearn, R with MASS and HSAUR3 as Debian has them):
/usr/bin/python3 tests/references/scripts/open-labels.py > tests/references/open-labels.json

The tables are stored with the values, so that both sides read the same. Records are standardised on the others of each
fold before neighbours are looked for. Records with a gap are left out.
"""
import csv
import datetime
import io
import json
import subprocess

import numpy as np
import sklearn
from sklearn import datasets
from sklearn.discriminant_analysis import LinearDiscriminantAnalysis
from sklearn.model_selection import LeaveOneOut, cross_val_predict
from sklearn.neighbors import KNeighborsClassifier
from sklearn.pipeline import make_pipeline
from sklearn.preprocessing import StandardScaler


def bundled(load, source):
    data = load()
    return source, list(data.feature_names), data.data, [str(data.target_names[t]) for t in data.target]


def from_r(expression, label, numbers, source):
    out = subprocess.run(["Rscript", "-e", f"suppressMessages(write.csv({expression}, row.names = FALSE))"],
                         capture_output=True, text=True, check=True).stdout
    rows = list(csv.DictReader(io.StringIO(out)))
    return source, numbers, np.array([[float(row[n]) for n in numbers] for row in rows]), [label(row) for row in rows]


def penguins():
    numbers = ["Beak Length (mm)", "Beak Depth (mm)", "Flipper Length (mm)", "Body Mass (g)"]
    with open("datasets/open/penguins.csv", encoding="utf8") as file:
        rows = [row for row in csv.DictReader(file) if all(row[n] for n in numbers)]
    return ("datasets/open/penguins.csv (vega-datasets 3.2.1)", numbers,
            np.array([[float(row[n]) for n in numbers] for row in rows]), [row["Species"] for row in rows])


TABLES = {
    "iris": bundled(datasets.load_iris, "scikit-learn: iris (Fisher 1936)"),
    "wine": bundled(datasets.load_wine, "scikit-learn: wine (UCI Machine Learning Repository, CC BY 4.0)"),
    "penguins": penguins(),
    "crabs": from_r("MASS::crabs", lambda row: row["sp"] + row["sex"], ["FL", "RW", "CL", "CW", "BD"],
                    "R MASS: crabs (Campbell & Mahon 1974), species with sex"),
    "glass": from_r("MASS::fgl", lambda row: row["type"], ["RI", "Na", "Mg", "Al", "Si", "K", "Ca", "Ba", "Fe"],
                    "R MASS: fgl (UCI Machine Learning Repository, CC BY 4.0)"),
    "pottery": from_r("HSAUR3::pottery", lambda row: row["kiln"],
                      ["Al2O3", "Fe2O3", "MgO", "CaO", "Na2O", "K2O", "TiO2", "MnO", "BaO"],
                      "R HSAUR3: pottery by kiln (Tubb, Parker & Nickless 1980)"),
}
CLASSIFIERS = {
    "nearest": make_pipeline(StandardScaler(), KNeighborsClassifier(1)),
    "five nearest": make_pipeline(StandardScaler(), KNeighborsClassifier(5)),
    "linear discriminants": LinearDiscriminantAnalysis(),
}


def measured(values, labels):
    labels = np.array(labels)
    found = {}
    for name, classifier in CLASSIFIERS.items():
        right = cross_val_predict(classifier, values, labels, cv=LeaveOneOut()) == labels
        found[name] = {"right": int(right.sum()),
                       "perLabel": {str(one): int(right[labels == one].sum()) for one in sorted(set(labels))}}
    return found


def stored(source, names, values, labels):
    return {"source": source, "attributes": names, "values": np.asarray(values).tolist(), "labels": labels,
            "accuracy": measured(values, labels)}


r = subprocess.run(["Rscript", "-e", "cat(R.version.string, 'MASS', as.character(packageVersion('MASS')),"
                    "'HSAUR3', as.character(packageVersion('HSAUR3')))"], capture_output=True, text=True, check=True)
print(json.dumps({
    "tool": "scikit-learn LeaveOneOut with KNeighborsClassifier and LinearDiscriminantAnalysis; tables also from R",
    "version": f"{sklearn.__version__}; {r.stdout}",
    "command": "/usr/bin/python3 tests/references/scripts/open-labels.py > tests/references/open-labels.json",
    "date": datetime.date.today().isoformat(),
    "tables": {name: stored(*table) for name, table in TABLES.items()},
}))
