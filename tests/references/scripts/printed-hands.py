"""
Right figures as papers and programs print them, in the words of several languages and in tables of many layouts;
values by scipy, pandas, statsmodels and R of open data sets (MASS, HSAUR3, boot, nlme, scikit-learn).

    Rscript printed-hands.R out.json
    python3 printed-hands.py out.json ../printed-hands.json
"""

import json, io, math, sys, warnings
import numpy as np, pandas as pd
from scipy import stats

warnings.filterwarnings("ignore")
R = json.load(open(sys.argv[1]))
sets = R["sets"]
from sklearn import datasets as skd

wine = skd.load_wine(as_frame=True)
w = wine.frame.copy()
w = pd.DataFrame(
    {
        "cultivar": ["cultivar " + "ABC"[t] for t in w.target],
        "alcohol": w.alcohol,
        "ash": w.ash,
        "hue": w.hue,
        "proline": w.proline.astype(int),
    }
)
w.insert(0, "record", ["wine%d" % (i + 1) for i in range(len(w))])
sets.append(
    dict(
        name="wine",
        csv=w.to_csv(index=False),
        kinds={"cultivar": "Cultivar"},
        measures={"alcohol": "Alcohol (%)", "ash": "Ash", "hue": "Hue", "proline": "Proline (mg/l)"},
    )
)
bc = skd.load_breast_cancer(as_frame=True).frame
b = pd.DataFrame(
    {
        "kind": ["benign" if t else "malignant" for t in bc.target],
        "radius": bc["mean radius"],
        "texture": bc["mean texture"],
        "smooth": bc["mean smoothness"],
    }
)
b.insert(0, "record", ["bc%d" % (i + 1) for i in range(len(b))])
sets.append(
    dict(
        name="cells",
        csv=b.to_csv(index=False),
        kinds={"kind": "Kind"},
        measures={"radius": "Radius", "texture": "Texture", "smooth": "Smoothness"},
    )
)
cases = []
MINUS = {"apa": "\u2212", "ascii": "-", "dash": "\u2013"}


class Hand:
    def __init__(s, name, dec=".", minus="-", thou="", lead=True, pct="%", pm=" ± ", rng="–"):
        s.name = name
        s.dec = dec
        s.minus = minus
        s.thou = thou
        s.lead = lead
        s.pct = pct
        s.pm = pm
        s.rng = rng

    def num(s, x, d=2, bound=False):
        t = f"{abs(x):.{d}f}"
        neg = x < 0 and float(t) != 0
        i, _, f = t.partition(".")
        if s.thou and len(i) > 3:
            i = f"{int(i):,}".replace(",", s.thou)
        if bound and not s.lead and i == "0":
            i = ""
        return (s.minus if neg else "") + i + (s.dec + f if f else "")

    def p(s, p, sym="p", eq=" = ", lt=" < ", d=3):
        if p < 0.001:
            return f"{sym}{lt}" + s.num(0.001, 3, True)
        return f"{sym}{eq}" + s.num(p, d, True)


H = [
    Hand("apa", minus="−", lead=False),
    Hand("ama", lead=False, rng=" to "),
    Hand("lancet", dec="·", minus="–", thou="\u2009"),
    Hand("bio", minus="−", thou=","),
    Hand("de", dec=",", minus="−", thou=".", pct=" %"),
    Hand("fr", dec=",", minus="–", thou="\u202f", pct="\u00a0%", rng=" à "),
    Hand("it", dec=",", thou="."),
    Hand("es", dec=",", thou=" "),
    Hand("da", dec=",", minus="–", thou=".", pct=" %"),
    Hand("arch", minus="–", thou=" ", pct=" %"),
]
HB = {h.name: h for h in H}


def case(hand, form, set_, rows=None, table=None, opts=None):
    cases.append(dict(hand=hand, form=form, set=set_, rows=rows or [], table=table, opts=opts or {}))


def desc(x):
    x = np.asarray(x, float)
    n = len(x)
    d = dict(
        n=n,
        mean=x.mean(),
        sd=x.std(ddof=1) if n > 1 else float("nan"),
        med=np.median(x),
        q1=np.quantile(x, 0.25),
        q3=np.quantile(x, 0.75),
        min=x.min(),
        max=x.max(),
    )
    d["se"] = d["sd"] / math.sqrt(n)
    d["cv"] = d["sd"] / d["mean"] if d["mean"] else float("nan")
    if n > 1:
        t = stats.t.ppf(0.975, n - 1)
        d["lo"] = d["mean"] - t * d["se"]
        d["hi"] = d["mean"] + t * d["se"]
    return d


for S in sets:
    df = pd.read_csv(io.StringIO(S["csv"]), keep_default_na=True, dtype={k: str for k in S["kinds"]})
    S["df"] = df
    name = S["name"]
    for m, label in S["measures"].items():
        base = label.split(" (")[0]
        unit = label.split("(")[1][:-1] if "(" in label else ""
        un = " " + unit if unit else ""
        for k, klabel in S["kinds"].items():
            g = {t: x[m].dropna().to_numpy(float) for t, x in df.groupby(k)}
            g = {t: v for t, v in g.items() if len(v) >= 2}
            D = {t: desc(v) for t, v in g.items()}
            terms = list(g)

            def sel(t):
                return f"{k} in {t}"

            # sample prose, each hand its own wording
            for t in terms:
                d = D[t]
                a = dict(attribute=m, select=sel(t))
                P = {
                    "apa": [
                        f"(M = {HB['apa'].num(d['mean'])}, SD = {HB['apa'].num(d['sd'])}, n = {d['n']})",
                        f"M = {HB['apa'].num(d['mean'])}, SE = {HB['apa'].num(d['se'],3)}, 95% CI [{HB['apa'].num(d['lo'])}, {HB['apa'].num(d['hi'])}]",
                    ],
                    "ama": [
                        f"{HB['ama'].num(d['mean'],1)} ({HB['ama'].num(d['sd'],1)}){un}",
                        f"mean (SD), {HB['ama'].num(d['mean'],1)} ({HB['ama'].num(d['sd'],1)}){un}",
                        f"median [IQR], {HB['ama'].num(d['med'],1)} [{HB['ama'].num(d['q1'],1)}-{HB['ama'].num(d['q3'],1)}]{un}",
                    ],
                    "lancet": [
                        f"{HB['lancet'].num(d['mean'])} (SD {HB['lancet'].num(d['sd'])}){un}",
                        f"{HB['lancet'].num(d['med'],1)}{un} (IQR {HB['lancet'].num(d['q1'],1)}–{HB['lancet'].num(d['q3'],1)})",
                        (
                            f"mean {HB['lancet'].num(d['mean'])} (95% CI {HB['lancet'].num(d['lo'])}–{HB['lancet'].num(d['hi'])})"
                            if d["lo"] > 0
                            else ""
                        ),
                    ],
                    "bio": [
                        f"{HB['bio'].num(d['mean'])} ± {HB['bio'].num(d['se'])}{un} (mean ± s.e.m., n = {d['n']})",
                        f"mean ± SD: {HB['bio'].num(d['mean'])} ± {HB['bio'].num(d['sd'])}{un}; range {HB['bio'].num(d['min'],1)}–{HB['bio'].num(d['max'],1)}",
                    ],
                    "de": [
                        f"MW = {HB['de'].num(d['mean'])}; SD = {HB['de'].num(d['sd'])}; n = {d['n']}",
                        f"Mittelwert {HB['de'].num(d['mean'])}{un} (Standardabweichung {HB['de'].num(d['sd'])})",
                        f"Median {HB['de'].num(d['med'])}{un} (Spannweite {HB['de'].num(d['min'],2)}–{HB['de'].num(d['max'],2)})",
                    ],
                    "fr": [
                        f"moyenne {HB['fr'].num(d['mean'])} ± {HB['fr'].num(d['sd'])}{un} (n = {d['n']})",
                        f"moyenne = {HB['fr'].num(d['mean'])} ; écart-type = {HB['fr'].num(d['sd'])} ; n = {d['n']}",
                        f"médiane {HB['fr'].num(d['med'])}{un} [{HB['fr'].num(d['q1'])} ; {HB['fr'].num(d['q3'])}]",
                    ],
                    "it": [
                        f"media {HB['it'].num(d['mean'])}{un} (DS {HB['it'].num(d['sd'])})",
                        f"mediana {HB['it'].num(d['med'])} (min {HB['it'].num(d['min'])}, max {HB['it'].num(d['max'])})",
                    ],
                    "es": [
                        f"media {HB['es'].num(d['mean'])}{un} (DE {HB['es'].num(d['sd'])}; n = {d['n']})",
                        f"media ± DE: {HB['es'].num(d['mean'])} ± {HB['es'].num(d['sd'])}",
                    ],
                    "da": [
                        f"gennemsnit {HB['da'].num(d['mean'])}{un} (SD {HB['da'].num(d['sd'])}, n = {d['n']})",
                        f"middelværdi {HB['da'].num(d['mean'])}; standardafvigelse {HB['da'].num(d['sd'])}; median {HB['da'].num(d['med'])}",
                    ],
                    "arch": [
                        f"x̄ = {HB['arch'].num(d['mean'])}{un}, s = {HB['arch'].num(d['sd'])}, n = {d['n']}",
                        f"mean {HB['arch'].num(d['mean'],1)}{un}, s.d. {HB['arch'].num(d['sd'],1)}, range {HB['arch'].num(d['min'],1)}–{HB['arch'].num(d['max'],1)}{un}, N = {d['n']}",
                        f"CV = {HB['arch'].num(100*d['cv'],1)} %" if d["mean"] > 0 else "",
                    ],
                }
                for h, texts in P.items():
                    for j, txt in enumerate(texts):
                        if not txt or any(map(lambda v: isinstance(v, float) and math.isnan(v), d.values())):
                            continue
                        case(
                            h,
                            f"sample{j}",
                            name,
                            [
                                dict(
                                    quantity=(
                                        "cv"
                                        if txt.startswith("CV")
                                        else (
                                            "median"
                                            if txt.lower().startswith(("m" + "ed", "méd"))
                                            else "median" if "IQR " in txt and h == "lancet" else "mean"
                                        )
                                    ),
                                    printed=txt,
                                    **a,
                                )
                            ],
                        )
            # difference and t, all pairs (first two pairs)
            pairs = [(terms[i], terms[j]) for i in range(len(terms)) for j in range(i + 1, len(terms))][:3]
            for s, t in pairs:
                x, y = g[s], g[t]
                if len(x) < 3 or len(y) < 3 or x.std() == 0 or y.std() == 0:
                    continue
                a = dict(attribute=m, select=sel(s), versus=sel(t))
                r = stats.ttest_ind(x, y)
                wl = stats.ttest_ind(x, y, equal_var=False)
                df0 = len(x) + len(y) - 2
                ci = r.confidence_interval()
                cw = wl.confidence_interval()
                sp = math.sqrt(((len(x) - 1) * x.var(ddof=1) + (len(y) - 1) * y.var(ddof=1)) / df0)
                dd = (x.mean() - y.mean()) / sp
                diff = x.mean() - y.mean()
                U = stats.mannwhitneyu(x, y)
                Ua = stats.mannwhitneyu(x, y, method="asymptotic")
                apa, ama, lan, bio, de, fr, it, es, da, ar = H
                T = dict(
                    apa=[
                        f"t({df0}) = {apa.num(r.statistic)}, {apa.p(r.pvalue)}, d = {apa.num(dd)}",
                        f"t({apa.num(wl.df)}) = {apa.num(wl.statistic)}, {apa.p(wl.pvalue)}, Welch's test",
                        f"U = {apa.num(U.statistic,1)}, {apa.p(U.pvalue)}",
                    ],
                    ama=[
                        f"mean difference, {ama.num(diff)}{un} [95% CI, {ama.num(ci.low)} to {ama.num(ci.high)}]; {ama.p(r.pvalue,'P','=','<')}",
                        f"(t{df0}={ama.num(r.statistic)}; {ama.p(r.pvalue,'P','=','<')})",
                        f"difference {ama.num(diff)} (95% CI {ama.num(cw.low)} to {ama.num(cw.high)})",
                    ],
                    lancet=[
                        f"difference {lan.num(diff)} (95% CI {lan.num(ci.low)} to {lan.num(ci.high)}; {lan.p(r.pvalue,'p','=','<',4)})"
                    ],
                    bio=[
                        f"t{''.join('₀₁₂₃₄₅₆₇₈₉'[int(c)] for c in str(df0))} = {bio.num(r.statistic)}, {bio.p(r.pvalue,'P')}",
                        f"two-tailed Student's t-test, t = {bio.num(r.statistic,3)}, d.f. = {df0}, {bio.p(r.pvalue,'P')}",
                        f"Mann–Whitney U test: U = {bio.num(U.statistic,1)}, n₁ = {len(x)}, n₂ = {len(y)}, {bio.p(U.pvalue,'P')}",
                    ],
                    de=[
                        f"t({df0}) = {de.num(r.statistic)}; {de.p(r.pvalue)}",
                        f"T-Test: t = {de.num(r.statistic)}, FG = {df0}, {de.p(r.pvalue)}",
                        f"t = {de.num(wl.statistic)}; df = {de.num(wl.df,1)}; {de.p(wl.pvalue)} (zweiseitig)",
                    ],
                    fr=[
                        f"t = {fr.num(r.statistic)} ; ddl = {df0} ; {fr.p(r.pvalue)}",
                        f"test t de Student : t({df0}) = {fr.num(r.statistic)} ; {fr.p(r.pvalue)}",
                        f"différence moyenne {fr.num(diff)} (IC à 95 % : {fr.num(ci.low)} à {fr.num(ci.high)})",
                    ],
                    it=[
                        f"t = {it.num(r.statistic)}; gl = {df0}; {it.p(r.pvalue)}",
                        f"test t di Student: t({df0}) = {it.num(r.statistic)}, {it.p(r.pvalue)}",
                    ],
                    es=[
                        f"t = {es.num(r.statistic)}; gl = {df0}; {es.p(r.pvalue)}",
                        f"prueba t: t({df0}) = {es.num(r.statistic)}, {es.p(r.pvalue)}",
                        f"diferencia de medias {es.num(diff)} (IC 95 %: {es.num(ci.low)} a {es.num(ci.high)})",
                    ],
                    da=[
                        f"t({df0}) = {da.num(r.statistic)}; {da.p(r.pvalue)}",
                        f"t-test: t = {da.num(r.statistic)}, frihedsgrader = {df0}, {da.p(r.pvalue)}",
                        f"t = {da.num(r.statistic)}; fg. = {df0}; {da.p(r.pvalue)}",
                    ],
                    arch=[
                        f"Student's t = {ar.num(r.statistic,3)}, {df0} df, {ar.p(r.pvalue)}",
                        f"t-test, t={ar.num(r.statistic,3)}, df={df0}, {ar.p(r.pvalue,'p','=','<')}",
                        f"Mann-Whitney U={ar.num(Ua.statistic,1)}, {ar.p(Ua.pvalue,'p','=','<')}",
                    ],
                    scipy=[
                        repr(r),
                        repr(wl),
                        repr(U),
                        repr(Ua),
                        repr(stats.ks_2samp(x, y)),
                        repr(stats.levene(x, y)),
                        repr(ci),
                        repr(stats.ranksums(x, y)),
                        repr(stats.brunnermunzel(x, y)),
                        repr(stats.alexandergovern(x, y)),
                    ],
                )
                for h, texts in T.items():
                    for j, txt in enumerate(texts):
                        q = (
                            "difference"
                            if txt.lower().startswith(("mean diff", "differ", "diff", "dif"))
                            else "interval" if txt.startswith("Confidence") else "statistic"
                        )
                        case(h, f"two{j}", name, [dict(quantity=q, printed=txt, **a)])
                # three columns of claims
            if len(terms) >= 2 and all(v.std() > 0 for v in g.values()):
                f = stats.f_oneway(*g.values())
                kw = stats.kruskal(*g.values())
                k1 = len(g) - 1
                N = sum(map(len, g.values()))
                k2 = N - k1 - 1
                allv = np.concatenate(list(g.values()))
                ssb = sum(len(v) * (v.mean() - allv.mean()) ** 2 for v in g.values())
                sst = ((allv - allv.mean()) ** 2).sum()
                eta = ssb / sst
                a = dict(attribute=f"{m}; {k}")
                apa, ama, lan, bio, de, fr, it, es, da, ar = H
                sub = lambda s: "".join({".": ".", ",": ","}.get(c) or "₀₁₂₃₄₅₆₇₈₉"[int(c)] for c in str(s))
                F = dict(
                    apa=[
                        f"F({k1}, {k2}) = {apa.num(f.statistic)}, {apa.p(f.pvalue)}, ηp2 = {apa.num(eta,2,True)}",
                        f"F({k1}, {k2}) = {apa.num(f.statistic)}, {apa.p(f.pvalue)}, η² = {apa.num(eta,3,True)}",
                        f"H({k1}) = {apa.num(kw.statistic)}, {apa.p(kw.pvalue)}",
                    ],
                    ama=[
                        f"F{k1},{k2}={ama.num(f.statistic)}; {ama.p(f.pvalue,'P','=','<')}",
                        f"Kruskal-Wallis {ama.p(kw.pvalue,'P','=','<')}",
                    ],
                    lancet=[f"F({k1},{k2})={lan.num(f.statistic)}; {lan.p(f.pvalue,'p','=','<',4)}"],
                    bio=[
                        f"F{sub(k1)},{sub(k2)} = {bio.num(f.statistic)}, {bio.p(f.pvalue,'P')}",
                        f"one-way ANOVA, F_{{{k1},{k2}}} = {bio.num(f.statistic,3)}, {bio.p(f.pvalue,'P')}",
                        f"Kruskal–Wallis test, χ²{sub(k1)} = {bio.num(kw.statistic)}, {bio.p(kw.pvalue,'P')}",
                        f"ANOVA: F = {bio.num(f.statistic)}; d.f. = {k1}, {k2}; {bio.p(f.pvalue,'P')}",
                    ],
                    de=[
                        f"F({k1}; {k2}) = {de.num(f.statistic)}; {de.p(f.pvalue)}",
                        f"Varianzanalyse: F = {de.num(f.statistic)}; df = {k1}/{k2}; {de.p(f.pvalue)}",
                        f"Kruskal-Wallis-Test: H = {de.num(kw.statistic)}; FG = {k1}; {de.p(kw.pvalue)}",
                    ],
                    fr=[
                        f"F({k1} ; {k2}) = {fr.num(f.statistic)} ; {fr.p(f.pvalue)}",
                        f"ANOVA, F = {fr.num(f.statistic)}, ddl = {k1} et {k2}, {fr.p(f.pvalue)}",
                        f"test de Kruskal-Wallis : H = {fr.num(kw.statistic)} ; ddl = {k1} ; {fr.p(kw.pvalue)}",
                    ],
                    it=[
                        f"F({k1}; {k2}) = {it.num(f.statistic)}; {it.p(f.pvalue)}",
                        f"ANOVA: F = {it.num(f.statistic)}; gl = {k1}, {k2}; {it.p(f.pvalue)}",
                    ],
                    es=[
                        f"F({k1}, {k2}) = {es.num(f.statistic)}; {es.p(f.pvalue)}",
                        f"ANOVA: F = {es.num(f.statistic)}; gl = {k1} y {k2}; {es.p(f.pvalue)}",
                    ],
                    da=[
                        f"F({k1}, {k2}) = {da.num(f.statistic)}; {da.p(f.pvalue)}",
                        f"variansanalyse: F = {da.num(f.statistic)}; df = {k1} og {k2}; {da.p(f.pvalue)}",
                    ],
                    arch=[
                        f"ANOVA F = {ar.num(f.statistic,3)}, df = {k1}, {k2}, {ar.p(f.pvalue)}",
                        f"Kruskal-Wallis H = {ar.num(kw.statistic,3)}, df = {k1}, {ar.p(kw.pvalue)}",
                        f"F={ar.num(f.statistic,3)}; dfs {k1} and {k2}; {ar.p(f.pvalue)}",
                    ],
                    scipy=[
                        repr(f),
                        repr(kw),
                        repr(stats.levene(*g.values())),
                        repr(stats.bartlett(*g.values())),
                        repr(stats.fligner(*g.values())),
                        str(stats.tukey_hsd(*g.values())) if len(g) < 6 else repr(f),
                    ],
                    sm=[],
                )
                for h, texts in F.items():
                    for j, txt in enumerate(texts):
                        case(h, f"several{j}", name, [dict(quantity="statistic", printed=txt, **a)])
                # tables of means, many layouts
                # pandas
                s = df[[k, m]].dropna().groupby(k)[m]
                case("pandas", "describe", name, table=s.describe().to_string())
                case("pandas", "describe2", name, table=s.describe().round(2).T.to_string())
                case(
                    "pandas",
                    "agg",
                    name,
                    table=s.agg(["count", "mean", "std", "median"]).round(3).to_string(),
                )
                case(
                    "pandas",
                    "markdown",
                    name,
                    table="| "
                    + k
                    + " | n | mean | sd |\n|---|---|---|---|\n"
                    + "\n".join(
                        f"| {t} | {D[t]['n']} | {D[t]['mean']:.2f} | {D[t]['sd']:.2f} |" for t in terms
                    ),
                )
    ms = list(S["measures"])
    for i in range(len(ms)):
        case("pandas", "describe1", name, table=df[[ms[i]]].describe().to_string())
        for j in range(i + 1, len(ms)):
            z = df[[ms[i], ms[j]]].dropna()
            x, y = z[ms[i]].to_numpy(float), z[ms[j]].to_numpy(float)
            r = stats.pearsonr(x, y)
            rs = stats.spearmanr(x, y)
            kt = stats.kendalltau(x, y)
            n = len(x)
            lr = stats.linregress(x, y)
            a = dict(attribute=f"{ms[i]}; {ms[j]}")
            apa, ama, lan, bio, de, fr, it, es, da, ar = H
            ci = r.confidence_interval()
            C = dict(
                apa=[
                    f"r({n-2}) = {apa.num(r.statistic,2,True)}, {apa.p(r.pvalue)}",
                    f"r({n-2}) = {apa.num(r.statistic,2,True)}, 95% CI [{apa.num(ci.low,2,True)}, {apa.num(ci.high,2,True)}], {apa.p(r.pvalue)}",
                    f"rs({n-2}) = {apa.num(rs.statistic,2,True)}, {apa.p(rs.pvalue)}",
                    f"τb = {apa.num(kt.statistic,2,True)}, {apa.p(kt.pvalue)}",
                ],
                ama=[
                    f"r={ama.num(r.statistic,2,True)}; {ama.p(r.pvalue,'P','=','<')}",
                    f"Spearman ρ={ama.num(rs.statistic,2,True)}; {ama.p(rs.pvalue,'P','=','<')}",
                ],
                lancet=[f"r={lan.num(r.statistic)}, {lan.p(r.pvalue,'p','=','<',4)}"],
                bio=[
                    f"Pearson's r = {bio.num(r.statistic,3)}, n = {n}, {bio.p(r.pvalue,'P')}",
                    f"R² = {bio.num(r.statistic**2,3)}, F₁,{''.join('₀₁₂₃₄₅₆₇₈₉'[int(c)] for c in str(n-2))} = {bio.num(lr.slope**2/lr.stderr**2)}, {bio.p(lr.pvalue,'P')}",
                    f"Spearman's rank correlation, rS = {bio.num(rs.statistic,3)}, N = {n}, {bio.p(rs.pvalue,'P')}",
                    f"y = {bio.num(lr.slope,3)}x {'+' if lr.intercept>=0 else '−'} {bio.num(abs(lr.intercept),3)}, R² = {bio.num(r.statistic**2,3)}",
                ],
                de=[
                    f"r = {de.num(r.statistic)}; n = {n}; {de.p(r.pvalue)}",
                    f"Spearmans ρ = {de.num(rs.statistic)}; {de.p(rs.pvalue)}; n = {n}",
                ],
                fr=[
                    f"r = {fr.num(r.statistic)} (n = {n} ; {fr.p(r.pvalue)})",
                    f"rho de Spearman = {fr.num(rs.statistic)} ; {fr.p(rs.pvalue)}",
                ],
                it=[f"r = {it.num(r.statistic)}; {it.p(r.pvalue)}; n = {n}"],
                es=[f"r de Pearson = {es.num(r.statistic)}; {es.p(r.pvalue)}"],
                da=[f"korrelationskoefficient r = {da.num(r.statistic)} (n = {n}; {da.p(r.pvalue)})"],
                arch=[
                    f"r² = {ar.num(r.statistic**2,3)}, n = {n}",
                    f"Kendall's tau = {ar.num(kt.statistic,3)}, {ar.p(kt.pvalue)}",
                ],
                scipy=[
                    repr(r),
                    repr(rs),
                    repr(kt),
                    repr(lr),
                    repr(stats.ttest_rel(x, y)),
                    repr(stats.wilcoxon(x, y)),
                ],
            )
            for h, texts in C.items():
                for jj, txt in enumerate(texts):
                    q = (
                        "correlation"
                        if not txt.startswith(("R²", "y =", "r²", "Linreg", "Ttest", "Wilcox"))
                        else "effect" if txt.startswith(("r²", "y")) else "statistic"
                    )
                    case(h, f"cor{jj}", name, [dict(quantity=q, printed=txt, **a)])
    # counts
    ks = list(S["kinds"])
    for k in ks:
        vc = df[k].dropna().value_counts()
        N = int(vc.sum())
        for t, c in vc.items():
            apa, ama, lan, bio, de, fr, it, es, da, ar = H
            pc = 100 * c / N
            a = dict(counted=f"{k} in {t}")
            loci, hici = stats.binomtest(int(c), N).proportion_ci(method="wilson")
            Q = dict(
                apa=[f"{c} ({pc:.1f}%)", f"n = {c}, {pc:.0f}%"],
                ama=[f"{c} of {N} ({pc:.1f}%)", f"{c} ({pc:.1f}%) of {N} patients"],
                lancet=[f"{lan.num(c,0)} ({lan.num(pc,0)}%) of {lan.num(N,0)}"],
                bio=[
                    f"{c}/{N} ({pc:.1f}%)",
                    f"{pc:.1f}% ({c} of {N})",
                    f"{pc:.1f}% (95% CI {100*loci:.1f}–{100*hici:.1f}%, n = {N})",
                ],
                de=[
                    f"{de.num(pc,1)} % ({c} von {N})",
                    f"{c} von {N} Stücken ({de.num(pc,1)} %)",
                    f"n = {c}; {de.num(pc,1)} %",
                ],
                fr=[
                    f"{c} sur {N} ({fr.num(pc,1)} %)",
                    f"{fr.num(pc,1)} % (n = {c}/{N})",
                    f"{fr.num(pc,1)}\u00a0% (n\u00a0=\u00a0{c})",
                ],
                it=[f"{c} su {N} ({it.num(pc,1)}%)", f"il {it.num(pc,1)}% ({c}/{N})"],
                es=[f"{c} de {N} ({es.num(pc,1)} %)", f"el {es.num(pc,1)} % (n = {c})"],
                da=[f"{c} ud af {N} ({da.num(pc,1)} %)", f"{da.num(pc,1)} pct. ({c} af {N})"],
                arch=[
                    f"{c} out of {N} sherds ({pc:.0f} per cent)",
                    f"{pc:.1f} per cent (n={c})",
                    f"{c} ({pc:.0f} %) of the {N}",
                ],
            )
            for h, texts in Q.items():
                for j, txt in enumerate(texts):
                    # share first or count first
                    import re

                    first = re.search(r"[\d.,·]+", txt).group(0)
                    q = (
                        "share"
                        if txt.strip()[0:3] in ("il ", "el ")
                        or re.match(r"[\d.,·]+\s?(%|per|pct)", txt.replace("\u00a0", " "))
                        else "count"
                    )
                    case(h, f"count{j}", name, [dict(quantity=q, printed=txt, **a)])
    for i in range(len(ks)):
        for j in range(i + 1, len(ks)):
            ct = pd.crosstab(df[ks[i]], df[ks[j]])
            if ct.shape[0] > 9 or ct.shape[1] > 6:
                continue
            c0 = stats.chi2_contingency(ct.to_numpy(), correction=False)
            c1 = stats.chi2_contingency(ct.to_numpy())
            N = int(ct.to_numpy().sum())
            V = math.sqrt(c0.statistic / N / (min(ct.shape) - 1))
            gt = stats.chi2_contingency(ct.to_numpy(), correction=False, lambda_="log-likelihood")
            a = dict(attribute=f"{ks[i]}; {ks[j]}")
            apa, ama, lan, bio, de, fr, it, es, da, ar = H
            df0 = c0.dof
            X = dict(
                apa=[
                    f"χ²({df0}, N = {N}) = {apa.num(c0.statistic)}, {apa.p(c0.pvalue)}, V = {apa.num(V,2,True)}",
                    f"χ2({df0}) = {apa.num(c0.statistic)}, {apa.p(c0.pvalue)}",
                ],
                ama=[f"χ²{df0}={ama.num(c0.statistic)}; {ama.p(c0.pvalue,'P','=','<')}"],
                bio=[
                    f"χ²{''.join('₀₁₂₃₄₅₆₇₈₉'[int(ch)] for ch in str(df0))} = {bio.num(c0.statistic)}, {bio.p(c0.pvalue,'P')}",
                    f"G = {bio.num(gt.statistic)}, d.f. = {df0}, {bio.p(gt.pvalue,'P')}",
                ],
                de=[
                    f"Chi² = {de.num(c0.statistic)}; FG = {df0}; {de.p(c0.pvalue)}",
                    f"χ²({df0}) = {de.num(c0.statistic)}; {de.p(c0.pvalue)}; Cramérs V = {de.num(V)}",
                ],
                fr=[
                    f"khi² = {fr.num(c0.statistic)} ; ddl = {df0} ; {fr.p(c0.pvalue)}",
                    f"χ² = {fr.num(c0.statistic)} ; {df0} ddl ; {fr.p(c0.pvalue)}",
                ],
                it=[f"chi quadrato = {it.num(c0.statistic)}; gl = {df0}; {it.p(c0.pvalue)}"],
                es=[
                    f"chi-cuadrado = {es.num(c0.statistic)}; gl = {df0}; {es.p(c0.pvalue)}",
                    f"χ² = {es.num(c0.statistic)}; g.l. = {df0}; {es.p(c0.pvalue)}",
                ],
                da=[
                    f"χ² = {da.num(c0.statistic)}; frihedsgrader = {df0}; {da.p(c0.pvalue)}",
                    f"chi²-test: χ²({df0}) = {da.num(c0.statistic)}, {da.p(c0.pvalue)}",
                ],
                arch=[
                    f"chi-square = {ar.num(c0.statistic,3)}, df = {df0}, {ar.p(c0.pvalue)}",
                    f"Chi-squared {ar.num(c0.statistic)} (df={df0}), {ar.p(c0.pvalue)}, Cramer's V {ar.num(V)}",
                ],
                scipy=[repr(c0), repr(c1), str(c0)],
            )
            for h, texts in X.items():
                for jj, txt in enumerate(texts):
                    case(h, f"chi{jj}", name, [dict(quantity="statistic", printed=txt, **a)])
            case("pandas", "crosstab", name, table=ct.to_string())
            case(
                "pandas", "crosstabm", name, table=pd.crosstab(df[ks[i]], df[ks[j]], margins=True).to_string()
            )
            case(
                "pandas",
                "crosstabn",
                name,
                table=(100 * pd.crosstab(df[ks[i]], df[ks[j]], normalize="index")).round(1).to_string(),
            )
            case(
                "pandas",
                "crosstabnall",
                name,
                table=pd.crosstab(df[ks[i]], df[ks[j]], normalize="all", margins=True).round(3).to_string(),
            )


# Tables in layouts of journals. T(S): for each set.
def pad(rows, sep="  ", left=1):
    wd = [max(len(str(r[c])) if c < len(r) else 0 for r in rows) for c in range(max(map(len, rows)))]
    return "\n".join(
        sep.join((str(x).ljust(wd[c]) if c < left else str(x).rjust(wd[c])) for c, x in enumerate(r)).rstrip()
        for r in rows
    )


def tabs(rows):
    return "\n".join("\t".join(map(str, r)) for r in rows)


def stars(p):
    return "***" if p < 0.001 else "**" if p < 0.01 else "*" if p < 0.05 else ""


for S in sets:
    df = S["df"]
    name = S["name"]
    ks = list(S["kinds"])
    ms = list(S["measures"])
    apa, ama, lan, bio, de, fr, it, es, da, ar = H
    lab = S["measures"]
    for k in ks:
        terms = [t for t in sorted(df[k].dropna().unique())]
        G = {m: {t: df[df[k] == t][m].dropna().to_numpy(float) for t in terms} for m in ms}
        G = {m: g for m, g in G.items() if all(len(v) >= 3 and v.std() > 0 for v in g.values())}
        if not G:
            continue
        D = {m: {t: desc(v) for t, v in g.items()} for m, g in G.items()}
        n = {t: int((df[k] == t).sum()) for t in terms}
        N = sum(n.values())
        Fm = {m: stats.f_oneway(*g.values()) for m, g in G.items()}
        K = {m: stats.kruskal(*g.values()) for m, g in G.items()}
        klab = S["kinds"][k]
        if len(terms) <= 4:
            # medicine, Table 1
            rows = [["Characteristic"] + [f"{t} (n={n[t]})" for t in terms] + ["P value"]]
            for m in G:
                rows.append(
                    [f"{lab[m]}, mean (SD)"]
                    + [f"{D[m][t]['mean']:.1f} ({D[m][t]['sd']:.1f})" for t in terms]
                    + [f"<.001" if Fm[m].pvalue < 0.001 else f"{Fm[m].pvalue:.3f}".lstrip("0")]
                )
            case("ama", "table1", name, table=f"Table 1. Baseline characteristics by {klab}\n" + tabs(rows))
            rows = [[""] + [f"{t}\n".strip() for t in terms] + ["p"]]
            rows.append([""] + [f"(n = {n[t]})" for t in terms] + [""])
            for m in G:
                rows.append(
                    [f"{lab[m]}"]
                    + [
                        f"{lan.num(D[m][t]['med'],1)} ({lan.num(D[m][t]['q1'],1)}–{lan.num(D[m][t]['q3'],1)})"
                        for t in terms
                    ]
                    + [lan.p(K[m].pvalue, "", "", "<", 4)]
                )
            case(
                "lancet",
                "table1",
                name,
                table="Table 1: Characteristics\n"
                + pad(rows)
                + "\nData are median (IQR). p values by the Kruskal-Wallis test.",
            )
            # medicine with kinds below
            for k2 in ks:
                if k2 == k:
                    continue
                t2 = [t for t in sorted(df[k2].dropna().unique())]
                if len(t2) > 7:
                    continue
                ct = pd.crosstab(df[k2], df[k])
                bases = ct.sum(axis=0)
                chi = stats.chi2_contingency(ct.to_numpy(), correction=False)
                rows = [["Characteristic"] + [f"{t} (n={n[t]})" for t in terms] + ["P value"]]
                for m in G:
                    rows.append(
                        [f"{lab[m]}, mean ± SD"]
                        + [f"{D[m][t]['mean']:.1f} ± {D[m][t]['sd']:.1f}" for t in terms]
                        + [ama.p(Fm[m].pvalue, "", "", "<")]
                    )
                rows.append(
                    [f"{S['kinds'][k2]}, n (%)"] + [""] * len(terms) + [ama.p(chi.pvalue, "", "", "<")]
                )
                for u in t2:
                    rows.append(
                        [f"   {u}"]
                        + [f"{ct.loc[u,t]} ({100*ct.loc[u,t]/bases[t]:.1f})" for t in terms]
                        + [""]
                    )
                case("ama", "table1k", name, table=f"Table 1. Patients by {klab}\n" + tabs(rows))
                case("ama", "table1kp", name, table=f"Table 1. Patients by {klab}\n" + pad(rows, "    "))
        # psychology: M SD pairs under two-level head
        rows = [
            ["Variable"] + sum([[t, ""] for t in terms], []) + ["F", "p"],
            [""] + ["M", "SD"] * len(terms) + ["", ""],
        ]
        for m in G:
            rows.append(
                [lab[m]]
                + sum([[f"{D[m][t]['mean']:.2f}", f"{D[m][t]['sd']:.2f}"] for t in terms], [])
                + [apa.num(Fm[m].statistic), apa.p(Fm[m].pvalue, "", "", "< ")]
            )
        case("apa", "twolevel", name, table="Table 2\nMeans and Standard Deviations\n" + tabs(rows))
        rows = [[f"{klab}", "n"] + sum([[lab[m], ""] for m in G], []), ["", ""] + ["M", "SD"] * len(G)]
        for t in terms:
            rows.append(
                [t, str(max(D[m][t]["n"] for m in G))]
                + sum([[apa.num(D[m][t]["mean"]), apa.num(D[m][t]["sd"])] for m in G], [])
            )
        if all(D[m][t]["n"] == n[t] for m in G for t in terms):
            case("apa", "twolevelT", name, table="Table 3\nDescriptive Statistics\n" + tabs(rows))
        for m in G:
            d = D[m]
            l = lab[m]
            base = l.split(" (")[0]
            # archaeology classic, dot leaders
            rows = [[klab, "N", "Mean", "s.d.", "CV", "Min.", "Max."]] + [
                [
                    t + " " + "." * (24 - len(t)),
                    d[t]["n"],
                    f"{d[t]['mean']:.2f}",
                    f"{d[t]['sd']:.2f}",
                    f"{100*d[t]['cv']:.1f}",
                    f"{d[t]['min']:.1f}",
                    f"{d[t]['max']:.1f}",
                ]
                for t in terms
            ]
            case("arch", "dots", name, table=f"Table 4. {l} by {klab.lower()}.\n" + pad(rows))
            # transposed with units in head
            rows = [[l] + terms] + [
                ["Number"] + [d[t]["n"] for t in terms],
                ["Mean"] + [f"{d[t]['mean']:.2f}" for t in terms],
                ["Standard deviation"] + [f"{d[t]['sd']:.2f}" for t in terms],
                ["Coefficient of variation (%)"] + [f"{100*d[t]['cv']:.1f}" for t in terms],
                ["Minimum"] + [f"{d[t]['min']:.2f}" for t in terms],
                ["Lower quartile"] + [f"{d[t]['q1']:.2f}" for t in terms],
                ["Median"] + [f"{d[t]['med']:.2f}" for t in terms],
                ["Upper quartile"] + [f"{d[t]['q3']:.2f}" for t in terms],
                ["Maximum"] + [f"{d[t]['max']:.2f}" for t in terms],
            ]
            case("arch", "transposed", name, table=f"Table 5: {base}\n" + pad(rows, "   "))
            # German
            rows = [[klab, "n", "x̄", "s", "Min", "Max", "Median"]] + [
                [
                    t,
                    de.num(d[t]["n"], 0),
                    de.num(d[t]["mean"]),
                    de.num(d[t]["sd"]),
                    de.num(d[t]["min"], 1),
                    de.num(d[t]["max"], 1),
                    de.num(d[t]["med"], 1),
                ]
                for t in terms
            ]
            case(
                "de",
                "table",
                name,
                table=f"Tab. 3. {base}: Mittelwerte und Standardabweichungen.\n" + tabs(rows),
            )
            rows = [[klab, "Anzahl", "Mittelwert", "Standardabw.", "Variationskoeff. (%)", "95%-KI"]] + [
                [
                    t,
                    de.num(d[t]["n"], 0),
                    de.num(d[t]["mean"]),
                    de.num(d[t]["sd"]),
                    de.num(100 * d[t]["cv"], 1),
                    (
                        f"{de.num(d[t]['lo'])}–{de.num(d[t]['hi'])}"
                        if d[t]["lo"] > 0
                        else f"{de.num(d[t]['lo'])} bis {de.num(d[t]['hi'])}"
                    ),
                ]
                for t in terms
            ]
            case("de", "tablep", name, table=f"Tabelle 7: {l}\n" + pad(rows, "   "))
            # French
            rows = [[klab, "Effectif", "Moyenne", "Écart-type", "Étendue"]] + [
                [
                    t,
                    d[t]["n"],
                    fr.num(d[t]["mean"]),
                    fr.num(d[t]["sd"]),
                    f"{fr.num(d[t]['min'],1)}–{fr.num(d[t]['max'],1)}",
                ]
                for t in terms
            ]
            case("fr", "table", name, table=f"Tableau 2 – {l} selon {klab}\n" + tabs(rows))
            rows = [[klab, "Numero", "Media", "DS", "Mediana", "Min–Max"]] + [
                [
                    t,
                    d[t]["n"],
                    it.num(d[t]["mean"]),
                    it.num(d[t]["sd"]),
                    it.num(d[t]["med"]),
                    f"{it.num(d[t]['min'],1)}–{it.num(d[t]['max'],1)}",
                ]
                for t in terms
            ]
            case("it", "table", name, table=f"Tabella 1. {l}\n" + tabs(rows))
            rows = [[klab, "n", "Media", "DE", "EE", "Mínimo", "Máximo"]] + [
                [
                    t,
                    d[t]["n"],
                    es.num(d[t]["mean"]),
                    es.num(d[t]["sd"]),
                    es.num(d[t]["se"], 3),
                    es.num(d[t]["min"], 1),
                    es.num(d[t]["max"], 1),
                ]
                for t in terms
            ]
            case("es", "table", name, table=f"Tabla 2. {l}\n" + tabs(rows))
            rows = [[klab, "Antal", "Gennemsnit", "Standardafvigelse", "Median", "Minimum", "Maksimum"]] + [
                [
                    t,
                    d[t]["n"],
                    da.num(d[t]["mean"]),
                    da.num(d[t]["sd"]),
                    da.num(d[t]["med"]),
                    da.num(d[t]["min"]),
                    da.num(d[t]["max"]),
                ]
                for t in terms
            ]
            case("da", "table", name, table=f"Tabel 1. {l}\n" + tabs(rows))
            # biology: mean ± SE with letters, n in brackets, notes
            rows = [[klab, f"{base} (mean ± s.e.m.)"]] + [
                [t, f"{d[t]['mean']:.2f} ± {d[t]['se']:.2f}{'abc'[i%3]} ({d[t]['n']})"]
                for i, t in enumerate(terms)
            ]
            case(
                "bio",
                "semletters",
                name,
                table=f"Table 1 | {l}\n"
                + tabs(rows)
                + f"\nValues are means ± s.e.m. with the number of individuals in parentheses; letters mark homogeneous groups. F{len(terms)-1},{sum(d[t]['n'] for t in terms)-len(terms)} = {Fm[m].statistic:.2f}, {bio.p(Fm[m].pvalue,'P')}.",
            )
            rows = [[klab, "n", "Mean", "SEM", "95% CI lower", "95% CI upper"]] + [
                [
                    t,
                    d[t]["n"],
                    bio.num(d[t]["mean"]),
                    bio.num(d[t]["se"], 3),
                    bio.num(d[t]["lo"]),
                    bio.num(d[t]["hi"]),
                ]
                for t in terms
            ]
            case("bio", "ci", name, table=f"Table S1. {l}\n" + tabs(rows))
            rows = [[klab, "N", "Mean [95% CI]", "Median [Q1, Q3]", "Range"]] + [
                [
                    t,
                    d[t]["n"],
                    f"{d[t]['mean']:.2f} [{d[t]['lo']:.2f}, {d[t]['hi']:.2f}]",
                    f"{d[t]['med']:.2f} [{d[t]['q1']:.2f}, {d[t]['q3']:.2f}]",
                    f"[{d[t]['min']:.1f}, {d[t]['max']:.1f}]",
                ]
                for t in terms
            ]
            case("bio", "brackets", name, table=f"Table 2. {l}\n" + tabs(rows))
            case("bio", "bracketsp", name, table=f"Table 2. {l}\n" + pad(rows, "   "))
            # with All row & ANOVA note
            al = desc(np.concatenate(list(G[m].values())))
            rows = (
                [[klab, "n", "Mean", "SD"]]
                + [[t, d[t]["n"], f"{d[t]['mean']:.2f}", f"{d[t]['sd']:.2f}"] for t in terms]
                + [["All", al["n"], f"{al['mean']:.2f}", f"{al['sd']:.2f}"]]
            )
            case("arch", "all", name, table=f"Table 6. {l}\n" + pad(rows))
            case(
                "arch",
                "alltop",
                name,
                table=f"Table 6. {l}\n" + tabs([rows[0], ["Total"] + rows[-1][1:]] + rows[1:-1]),
            )
            # ANOVA table
            gs = list(G[m].values())
            allv = np.concatenate(gs)
            ssb = sum(len(v) * (v.mean() - allv.mean()) ** 2 for v in gs)
            ssw = sum(((v - v.mean()) ** 2).sum() for v in gs)
            a1 = len(gs) - 1
            a2 = len(allv) - len(gs)
            fx = ssb / a1 / (ssw / a2)
            rows = [
                ["Source of variation", "SS", "df", "MS", "F", "P"],
                [
                    "Between groups",
                    f"{ssb:.3f}",
                    a1,
                    f"{ssb/a1:.3f}",
                    f"{fx:.3f}",
                    f"{Fm[m].pvalue:.4f}" if Fm[m].pvalue >= 0.0001 else "<0.0001",
                ],
                ["Within groups", f"{ssw:.3f}", a2, f"{ssw/a2:.3f}", "", ""],
                ["Total", f"{ssb+ssw:.3f}", a1 + a2, "", "", ""],
            ]
            case("bio", "anova", name, table=f"Table 3. Analysis of variance of {l}\n" + tabs(rows))
            rows = [
                ["Quelle", "QS", "FG", "MQ", "F", "p"],
                [
                    "Zwischen",
                    de.num(ssb, 2),
                    a1,
                    de.num(ssb / a1, 2),
                    de.num(fx, 2),
                    de.p(Fm[m].pvalue, "", "", "< "),
                ],
                ["Innerhalb", de.num(ssw, 2), a2, de.num(ssw / a2, 2), "", ""],
                ["Gesamt", de.num(ssb + ssw, 2), a1 + a2, "", "", ""],
            ]
            case("de", "anova", name, table=f"Tab. 8. Varianzanalyse ({l})\n" + tabs(rows))
            import statsmodels.api as sm, statsmodels.formula.api as smf

            dd = df[[k, m]].dropna().rename(columns={k: "g", m: "y"})
            fit = smf.ols("y ~ g", dd).fit()
            case("sm", "anova", name, table=sm.stats.anova_lm(fit).to_string())
            case("sm", "summary", name, table=fit.summary().as_text())
    # correlation matrix with stars
    if len(ms) >= 2:
        z = df[ms].dropna()
        nn = len(z)
        rows = [["Variable", "M", "SD"] + [str(i + 1) for i in range(len(ms))]]
        for i, m in enumerate(ms):
            r = [f"{i+1}. {lab[m]}", f"{z[m].mean():.2f}", f"{z[m].std():.2f}"]
            for j in range(len(ms)):
                if j > i:
                    r.append("")
                elif j == i:
                    r.append("—")
                else:
                    q = stats.pearsonr(z[m], z[ms[j]])
                    r.append(apa.num(q.statistic, 2, True) + stars(q.pvalue))
            rows.append(r)
        case(
            "apa",
            "cormat",
            name,
            table=f"Table 1\nMeans, Standard Deviations, and Correlations (N = {nn})\n"
            + tabs(rows)
            + "\nNote. *p < .05. **p < .01. ***p < .001.",
        )
        case("pandas", "corr", name, table=z.corr().round(3).to_string())
    # counts tables
    for i in range(len(ks)):
        for j in range(len(ks)):
            if i == j:
                continue
            ct = pd.crosstab(df[ks[i]], df[ks[j]])
            if ct.shape[0] > 10 or ct.shape[1] > 6:
                continue
            R_ = list(ct.index)
            C_ = list(ct.columns)
            A = ct.to_numpy()
            rt = A.sum(1)
            cl = A.sum(0)
            N = int(A.sum())
            kl, cl_ = S["kinds"][ks[i]], S["kinds"][ks[j]]
            z = lambda v: "–" if v == 0 else str(v)
            # archaeology: dash for zero, total both sides, % of column in alternate columns
            rows = (
                [[kl] + C_ + ["Total"]]
                + [[R_[a]] + [z(v) for v in A[a]] + [rt[a]] for a in range(len(R_))]
                + [["Total"] + list(cl) + [N]]
            )
            case("arch", "counts", name, table=f"Table 1. {kl} by {cl_.lower()}.\n" + tabs(rows))
            case("arch", "countsp", name, table=f"Table 1. {kl} by {cl_.lower()}.\n" + pad(rows))
            rows = (
                [[kl] + sum([[c, ""] for c in C_], []) + ["Total", ""], [""] + ["n", "%"] * (len(C_) + 1)]
                + [
                    [R_[a]]
                    + sum([[A[a][b], f"{100*A[a][b]/cl[b]:.1f}"] for b in range(len(C_))], [])
                    + [rt[a], f"{100*rt[a]/N:.1f}"]
                    for a in range(len(R_))
                ]
                + [["Total"] + sum([[v, "100.0"] for v in cl], []) + [N, "100.0"]]
            )
            case("arch", "npairs", name, table=f"Table 2. {kl} in each {cl_.lower()}\n" + tabs(rows))
            rows = (
                [[kl] + sum([[c, ""] for c in C_], []) + ["Gesamt", ""], [""] + ["Anz.", "%"] * (len(C_) + 1)]
                + [
                    [R_[a]]
                    + sum([[A[a][b], de.num(100 * A[a][b] / cl[b], 1)] for b in range(len(C_))], [])
                    + [rt[a], de.num(100 * rt[a] / N, 1)]
                    for a in range(len(R_))
                ]
                + [["Gesamt"] + sum([[v, "100,0"] for v in cl], []) + [N, "100,0"]]
            )
            case("de", "npairs", name, table=f"Tab. 2. {kl}\n" + tabs(rows))
            rows = [[kl] + C_ + ["Total"]] + [
                [R_[a]] + [f"{v} ({100*v/rt[a]:.0f})" for v in A[a]] + [f"{rt[a]} (100)"]
                for a in range(len(R_))
            ]
            case("bio", "rowpct", name, table=f"Table 2. {kl}: number (row %)\n" + tabs(rows))
            rows = (
                [[kl] + C_ + ["Ensemble"]]
                + [
                    [R_[a]]
                    + [f"{v} ({fr.num(100*v/cl[b],1)} %)" for b, v in enumerate(A[a])]
                    + [f"{rt[a]} ({fr.num(100*rt[a]/N,1)} %)"]
                    for a in range(len(R_))
                ]
                + [["Ensemble"] + [f"{v} (100 %)" for v in cl] + [f"{N} (100 %)"]]
            )
            case("fr", "colpct", name, table=f"Tableau 1 – {kl}\n" + tabs(rows))
            rows = (
                [[kl] + C_]
                + [[R_[a]] + [da.num(100 * v / cl[b], 1) for b, v in enumerate(A[a])] for a in range(len(R_))]
                + [["I alt"] + ["100"] * len(C_)]
                + [["Antal (n)"] + list(cl)]
            )
            case("da", "pctbase", name, table=f"Tabel 2. {kl} (pct.)\n" + tabs(rows))
            rows = [[kl] + C_ + ["N"]] + [
                [R_[a]] + [f"{100*v/rt[a]:.0f}%" for v in A[a]] + [rt[a]] for a in range(len(R_))
            ]
            case("apa", "rowpctN", name, table=f"Table 4\nShare of each {cl_}\n" + tabs(rows))
            rows = (
                [[kl] + C_ + ["Totale"]]
                + [[R_[a]] + list(A[a]) + [rt[a]] for a in range(len(R_))]
                + [["Totale"] + list(cl) + [N]]
                + [["%"] + [it.num(100 * v / N, 1) for v in cl] + ["100"]]
            )
            case("it", "pctrow", name, table=f"Tabella 3. {kl}\n" + tabs(rows))
            rows = (
                [[kl, "Total"] + C_]
                + [["Total", N] + list(cl)]
                + [["  " + R_[a], rt[a]] + list(A[a]) for a in range(len(R_))]
            )
            case("bio", "totalfirst", name, table=f"Table 1. Numbers\n" + tabs(rows))
            case("bio", "totalfirstp", name, table=f"Table 1. Numbers\n" + pad(rows, "   "))
            # stacked long: sections
            rows = [[f"{cl_} / {kl}", "n", "%"]]
            for b, c in enumerate(C_):
                rows.append([c, cl[b], ""])
                for a in range(len(R_)):
                    rows.append(["   " + R_[a], A[a][b], f"{100*A[a][b]/cl[b]:.1f}"])
            rows.append(["Total", N, ""])
            case("arch", "sections", name, table="Table 9. Composition\n" + tabs(rows))
            case("arch", "sectionsp", name, table="Table 9. Composition\n" + pad(rows, "   "))
            chi = stats.chi2_contingency(A, correction=False)
            rows = (
                [[kl] + C_ + ["Total"]]
                + [
                    [R_[a] + ("ᵃ" if a == 0 else "")]
                    + [str(v) + ("†" if (a, b) == (0, 0) else "") for b, v in enumerate(A[a])]
                    + [rt[a]]
                    for a in range(len(R_))
                ]
                + [["Total"] + list(cl) + [N]]
            )
            case(
                "bio",
                "notes",
                name,
                table="Table 3. Counts\n"
                + tabs(rows)
                + f"\nᵃ Includes doubtful cases. † Two of them broken.\nχ² = {chi.statistic:.2f}, d.f. = {chi.dof}, {bio.p(chi.pvalue,'P')}",
            )
    for k in ks:
        vc = df[k].dropna().value_counts()
        N = int(vc.sum())
        kl = S["kinds"][k]
        rows = [[kl, "Frequency", "Percent", "Valid Percent", "Cumulative Percent"]]
        cum = 0
        for t, v in vc.items():
            cum += v
            rows.append([t, v, f"{100*v/N:.1f}", f"{100*v/N:.1f}", f"{100*cum/N:.1f}"])
        rows.append(["Total", N, "100.0", "100.0", ""])
        case("apa", "freq", name, table=f"Frequencies\n" + tabs(rows))
        case("apa", "freqp", name, table=pad(rows, "   "))
        rows = (
            [[kl, "Antal", "Procent"]]
            + [[t, v, da.num(100 * v / N, 1)] for t, v in vc.items()]
            + [["I alt", N, "100,0"]]
        )
        case("da", "freq", name, table=tabs(rows))
        rows = (
            [[kl, "N.º", "%"]]
            + [[t, v, es.num(100 * v / N, 1)] for t, v in vc.items()]
            + [["Total", N, "100"]]
        )
        case("es", "freq", name, table=tabs(rows))
# R console
for o in R["console"]:
    n = o["set"]
    f = o["form"]
    sp = o["spec"]
    S = next(s for s in sets if s["name"] == n)
    tab = f in (
        "summary",
        "quantile",
        "tapply",
        "aggregate",
        "bysummary",
        "aov",
        "anova",
        "aov2",
        "tukey",
        "pairwise",
        "cormat",
        "table1",
        "prop1",
        "table2",
        "table2m",
        "prop2",
        "prop2c",
        "ftable",
        "xtabsmean",
        "lm",
        "lmxy",
    )
    if tab:
        case("R", f, n, table=o["text"])
        continue
    a = {}
    if "with" in sp:
        a = dict(attribute=f"{sp['measure']}; {sp['with']}")
    elif "measure" in sp and "by" in sp:
        terms = sorted(S["df"][sp["by"]].dropna().unique())
        a = (
            dict(
                attribute=sp["measure"],
                select=f"{sp['by']} in {terms[0]}",
                versus=f"{sp['by']} in {terms[1]}",
            )
            if len(terms) == 2
            else dict(attribute=f"{sp['measure']}; {sp['by']}")
        )
    elif "measure" in sp:
        a = dict(attribute=sp["measure"])
    elif "rows" in sp:
        a = dict(attribute=f"{sp['rows']}; {sp['columns']}")
    elif "by" in sp:
        a = dict(attribute=sp["by"])
    q = "correlation" if f.startswith("cor.") else "statistic"
    if f in ("fisher",):
        q = "p"
    case("R", f, n, [dict(quantity=q, printed=o["text"], **a)])
    case("R", "paste." + f, n, table=o["text"])

# A few of each form, of different data sets.
FEW = 5
kept, times = [], {}
for one in cases:
    key = (one["hand"], one["form"], one["table"] is None)
    at = times.setdefault(key, [])
    if len(at) < FEW and at.count(one["set"]) < (1 if len(at) < 3 else 2):
        at.append(one["set"])
        kept.append(one)
used = {one["set"] for one in kept}
import scipy, sklearn, statsmodels

json.dump(
    dict(
        tool="R with MASS, HSAUR3, boot and nlme; Python with scipy, pandas, scikit-learn and statsmodels",
        version="R %s; scipy %s, pandas %s, scikit-learn %s, statsmodels %s"
        % (R["version"], scipy.__version__, pd.__version__, sklearn.__version__, statsmodels.__version__),
        command="Rscript printed-hands.R out.json && python3 printed-hands.py out.json ../printed-hands.json",
        date="2026-11-30",
        sets=[{k: v for k, v in S.items() if k != "df"} for S in sets if S["name"] in used],
        cases=kept,
    ),
    open(sys.argv[2], "w"),
    ensure_ascii=False,
    separators=(",", ":"),
)
