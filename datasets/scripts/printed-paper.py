"""Writes datasets/demo/claims.csv and datasets/demo/printed-paper.md: an invented paper on the invented coast.

What is printed rightly is computed here with pandas and scipy from the normalised fragments, so that it owes
nothing to Thrum's own statistics; nine figures are then printed wrongly on purpose, in nine ways.

  npx tsx src/cli/main.ts run datasets/demo/study.json --out out
  /usr/bin/python3 datasets/scripts/printed-paper.py out/fragments.csv
"""

import csv
import sys
from pathlib import Path

import numpy as np
import pandas as pd
from scipy import stats

fragments = pd.read_csv(sys.argv[1], low_memory=False)
demo = Path(__file__).resolve().parents[1] / "demo"

SITES = ["Quorrimel Cave", "Ulvombre Terraces", "Drommavel Landing", "Pellunar Wreck", "Tazzimbe Gallery", "Ysketh Pans"]
Q, U, D, P, T, Y = SITES


def by_item(attribute):
    """One value an item: the median of the middles of its fragments' readings."""
    middle = (fragments[attribute + ".low"] + fragments[attribute + ".high"]) / 2
    table = pd.DataFrame({"item": fragments.item, "site": fragments.site, "value": middle})
    return table.groupby("item", sort=False).agg(site=("site", "first"), value=("value", "median"))


def values(attribute, site):
    table = by_item(attribute)
    return table[table.site == site].value.dropna().to_numpy()


def readings_of_fragments(attribute, site):
    middle = (fragments[attribute + ".low"] + fragments[attribute + ".high"]) / 2
    return middle[fragments.site == site].dropna().to_numpy()


def items(site):
    return fragments[fragments.site == site].item.nunique()


def terms(attribute, site):
    """One term an item, where its fragments agree."""
    own = fragments[fragments.site == site]
    kinds = own.groupby("item", sort=False)[attribute].agg(lambda column: column.dropna().unique())
    assert all(len(kind) <= 1 for kind in kinds), (attribute, site)
    return [kind[0] for kind in kinds if len(kind) == 1]


spacing = {site: values("rowSpacing", site) for site in (Q, U, D)}
mesh = {site: values("meshGauge", site) for site in (D, Y)}
width = {site: values("diameter1", site) for site in (D, Y)}
density = {site: values("density1", site) for site in (D, Y, T)}
stitches = {site: values("stitchDensity", site) for site in (Q, U)}
fibres = {site: terms("fibre", site) for site in (Q, U, P, T, Y)}

student = stats.ttest_ind(width[D], width[Y], equal_var=True)
degrees = len(width[D]) + len(width[Y]) - 2
wider = stats.mannwhitneyu(mesh[D], mesh[Y], alternative="two-sided", method="asymptotic")


def robinson(a, b):
    kinds = set(a) | set(b)
    return 200 - sum(abs(100 * a.count(kind) / len(a) - 100 * b.count(kind) / len(b)) for kind in kinds)


def shannon(list_of_terms):
    shares = np.array([list_of_terms.count(kind) for kind in set(list_of_terms)]) / len(list_of_terms)
    return float(-(shares * np.log(shares)).sum())


def share(kind, site):
    return 100 * fibres[site].count(kind) / len(fibres[site])


rows = []


def claim(place, quantity, printed, **more):
    rows.append({"id": f"c{len(rows) + 1}", "place": place, "quantity": quantity, "printed": printed, **more})
    return printed


def at(site):
    return f"site in {site}"


total = sum(items(site) for site in SITES)
counts = [claim("Table 1", "count", str(items(site)), set="table 1", counted=at(site)) for site in SITES]
whole = claim("Table 1", "total", str(total), set="table 1")


def row(site, attribute, quantity, printed, place="Table 2", **more):
    return claim(place, quantity, printed, set=f"{attribute} {site.split()[0]}", attribute=attribute, select=at(site), **more)


q_n = row(Q, "rowSpacing", "n", str(len(spacing[Q])))
q_mean = row(Q, "rowSpacing", "mean", f"{readings_of_fragments('rowSpacing', Q).mean():.1f}", note="wrong: mean of fragments")
q_sd = row(Q, "rowSpacing", "sd", f"{spacing[Q].std(ddof=1):.1f}")
q_median = row(Q, "rowSpacing", "median", f"{np.median(spacing[Q]):.1f}")
q_range = row(Q, "rowSpacing", "range", f"{spacing[Q].min():.1f}-{spacing[Q].max():.1f}")
u_mean = row(U, "rowSpacing", "mean", f"{spacing[U].mean() / 10:.2f}", note="wrong: in cm")
u_n = row(U, "rowSpacing", "n", str(len(spacing[U])))
d_n = row(D, "rowSpacing", "n", str(len(spacing[D])))
d_sd = row(D, "rowSpacing", "sd", f"{spacing[D].std(ddof=1):.2f}")
d_median = row(D, "rowSpacing", "median", f"{np.median(spacing[D]):.1f}")
d_q3 = row(D, "rowSpacing", "q3", f"{np.quantile(spacing[D], 0.75, method='weibull'):.2f}", note="wrong: quantile of type 6")
d_q1 = row(D, "rowSpacing", "q1", f"{np.quantile(spacing[D], 0.25):.2f}")

md_n = row(D, "meshGauge", "n", str(len(mesh[D])), "p. 5")
md_mean = row(D, "meshGauge", "mean", f"{mesh[D].mean():.1f}±{mesh[D].std(ddof=1):.1f}", "p. 5")
md_se = row(D, "meshGauge", "se", f"{mesh[D].std(ddof=1) / np.sqrt(len(mesh[D])):.2f}", "p. 5")
my_n = row(Y, "meshGauge", "n", str(len(mesh[Y])), "p. 5")
my_mean = row(Y, "meshGauge", "mean", f"{mesh[Y].mean():.1f}", "p. 5")
my_sd = row(Y, "meshGauge", "sd", f"{mesh[Y].std(ddof=0):.2f}", "p. 5", note="wrong: divisor n")
u_test = claim("p. 5", "p", f"p = {wider.pvalue:.2f}", set="meshes", test="U", attribute="meshGauge", select=at(D), versus=at(Y))

wd_mean = row(D, "diameter1", "mean", f"{width[D].sum() / items(D):.2f}", "p. 6", note="wrong: missing as 0")
wy_mean = row(Y, "diameter1", "mean", f"{width[Y].mean():.2f}", "p. 6")
wy_cv = row(Y, "diameter1", "cv", f"{100 * width[Y].std(ddof=1) / width[Y].mean():.0f} %", "p. 6")
pair = {"set": "widths", "test": "t", "attribute": "diameter1", "select": at(D), "versus": at(Y)}
t_statistic = claim("p. 6", "statistic", f"t({degrees}) = {student.statistic:.2f}".replace("-", "−"), **pair)
t_p = claim("p. 6", "p", f"p = {student.pvalue / 2:.2f}", note="wrong: one-sided", **pair)
gap = claim(
    "p. 6", "difference", f"{density[Y].mean() - density[D].mean():.2f}".replace("-", "−"),
    attribute="density1", select=at(D), versus=at(Y), note="wrong: groups swapped",
)

wool = claim("p. 7", "share", f"{100 * fibres[T].count('wool') / items(T):.0f} %", attribute="fibre", select=at(T), counted="fibre within wool", note="wrong: of all items")
hemp = claim("p. 7", "share", f"{share('hemp', Y):.0f} %", attribute="fibre", select=at(Y), counted="fibre within hemp")
flax_count = claim("p. 7", "count", str(fibres[U].count("flax")), attribute="fibre", select=at(U), counted="fibre within flax")
flax = claim("p. 7", "share", f"{share('flax', U):.1f} %", attribute="fibre", select=at(U), counted="fibre within flax")
alike = claim("p. 7", "similarity", f"{robinson(fibres[Q], fibres[U]):.0f}", test="brainerd-robinson", attribute="fibre", select=at(Q), versus=at(U))
varied = claim("p. 7", "diversity", f"{shannon(fibres[P]):.2f}", test="shannon", attribute="fibre", select=at(P))

strips_n = claim("p. 8", "n", "20", set="strips")
strips_mean = claim("p. 8", "mean", "3.48", set="strips", step="1", note="wrong: no 20 whole numbers have this mean")

assert len(rows) == 40, len(rows)
COLUMNS = "id place quantity set test sided step attribute select versus counted printed note".split()
with open(demo / "claims.csv", "w", newline="", encoding="utf-8") as file:
    writer = csv.DictWriter(file, COLUMNS, restval="", lineterminator="\r\n")
    writer.writeheader()
    writer.writerows({key: value for key, value in each.items() if key != "note"} for each in rows)

wrong = "\n".join(f"| {each['id']} | {each['printed']} | {each['note'].removeprefix('wrong: ')} |" for each in rows if "note" in each)
table1 = "\n".join(f"| {site} | {count} |" for site, count in zip(SITES, counts))
(demo / "printed-paper.md").write_text(f"""# Spacing, mesh and fibre on the Othmarel coast

**All of this is invented**, like the coast itself: a paper made up so that its figures can be checked
against the demo's data with `npx thrum check datasets/demo/claims.csv --study datasets/demo/study.json`. `claims.csv` holds 40 of its figures.
Written by `datasets/scripts/printed-paper.py`. Public domain (CC0 1.0).

## Items

Table 1. Items by site.

| site | items |
|---|---|
{table1}
| total | {whole} |

## Spacing of rows

Table 2. Row spacing (mm), items with a reading.

| site | n | mean | sd | median | lower quartile | upper quartile | range |
|---|---|---|---|---|---|---|---|
| {Q} | {q_n} | {q_mean} | {q_sd} | {q_median} | | | {q_range} |
| {U} | {u_n} | {u_mean} | | | | | |
| {D} | {d_n} | | {d_sd} | {d_median} | {d_q1} | {d_q3} | |

## Mesh (p. 5)

The meshes of {D} (n = {md_n}) measure {md_mean} mm (standard error {md_se}); those of {Y} (n = {my_n}) have a
mean of {my_mean} mm and a standard deviation of {my_sd} mm. The two are not distinguishable (Mann-Whitney, {u_test}).

## Elements (p. 6)

Passive elements are {wd_mean} mm wide at {D} and {wy_mean} mm at {Y}, where they vary by {wy_cv}
({t_statistic}, {t_p}). In density of system 1, {D} less {Y} is {gap} per cm.

## Fibre (p. 7)

Wool makes up {wool} of the fibres determined at {T}, hemp {hemp} of those at {Y}. At {U}, {flax_count} items are of flax
({flax}). The fibres of {Q} and {U} are alike to {alike} of 200 (Brainerd-Robinson); the diversity of fibres in the
wreck is {varied} (Shannon, natural logarithms).

## A second count (p. 8)

On {strips_n} strips a second recorder counted knots in whole numbers; the mean is {strips_mean}.

## What is wrong, and was meant to be

| claim | printed | in truth |
|---|---|---|
{wrong}
""", encoding="utf-8")
