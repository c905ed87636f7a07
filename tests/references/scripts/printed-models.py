"""
Fitted models as statsmodels, scipy and pandas print them, beside those of printed-models.R, of the same data sets.

    Rscript printed-models.R out.json
    python3 printed-models.py out.json ../printed-models.json
"""

import json, io, sys, warnings
warnings.filterwarnings('ignore')
import numpy as np, pandas as pd
from scipy import stats
import statsmodels.api as sm, statsmodels.formula.api as smf
from statsmodels.stats.multicomp import pairwise_tukeyhsd
R=json.load(open(sys.argv[1])); cases=R['cases']
def case(hand,form,set_,table=None,rows=None): cases.append(dict(hand=hand,form=form,set=set_,rows=rows or [],table=table))
for S in R['sets']:
    df=pd.read_csv(io.StringIO(S['csv'])); n=S['name']; ks=list(S['kinds'] or {}); ms=list(S['measures'])
    df.columns=[c.replace('.','_') for c in df.columns]; ks=[k.replace('.','_') for k in ks]; ms=[m.replace('.','_') for m in ms]
    if len(ms)>1:
        m=smf.ols(f'{ms[0]} ~ '+' + '.join(ms[1:3]),df).fit(); case('sm','ols',n,str(m.summary())); case('sm','olst',n,str(m.summary().tables[1])); case('sm','anova',n,sm.stats.anova_lm(m,typ=2).to_string())
        case('sm','params',n,pd.DataFrame(dict(coef=m.params,se=m.bse,t=m.tvalues,p=m.pvalues)).round(4).to_string())
        case('scipy','linreg',n,rows=[dict(quantity='statistic',printed=repr(stats.linregress(df[ms[1]],df[ms[0]])))])
        case('pd','describe',n,df[ms].describe().round(3).to_string()); case('pd','corr',n,df[ms].corr().round(3).to_string())
    for k in ks:
        if df[k].nunique()<2: continue
        m=smf.ols(f'{ms[0]} ~ C({k})',df).fit(); case('sm','anova1',n,sm.stats.anova_lm(m).to_string()); case('sm','ols1',n,str(m.summary()))
        if df[k].nunique()>2: case('sm','tukey',n,str(pairwise_tukeyhsd(df[ms[0]],df[k].astype(str)).summary())); case('scipy','tukey',n,rows=[dict(quantity='statistic',printed=str(stats.tukey_hsd(*[g.values for _,g in df.groupby(k)[ms[0]]])))])
        case('pd','grp',n,df.groupby(k)[ms].agg(['mean','std','count']).round(2).to_string())
        case('pd','vc',n,df[k].value_counts().to_string())
        case('pd','ct',n,df.groupby(k)[ms[0]].agg(n='count',mean='mean',sd='std',min='min',max='max').round(2).to_markdown() if False else df.groupby(k)[ms[0]].agg(n='count',mean='mean',sd='std',min='min',max='max').round(2).to_csv())
        if df[k].nunique()==2:
            y=(df[k]==sorted(df[k].unique())[0]).astype(int); X=sm.add_constant(df[ms[:2]])
            try: 
                l=sm.Logit(y,X).fit(disp=0); case('sm','logit',n,str(l.summary()))
            except Exception as e: pass
            a,b=[g.values for _,g in df.groupby(k)[ms[0]]]; ds=sm.stats.CompareMeans(sm.stats.DescrStatsW(a),sm.stats.DescrStatsW(b)); case('sm','compare',n,str(ds.summary()))

FEW = 4
kept, times = [], {}
for one in cases:
    at = times.setdefault((one["hand"], one["form"], one["table"] is None), [])
    if len(at) < FEW and one["set"] not in at:
        at.append(one["set"])
        kept.append(one)
for S in R["sets"]:
    S["kinds"], S["measures"] = S["kinds"] or {}, S["measures"]
import scipy, statsmodels

json.dump(
    dict(
        tool="R with MASS, nlme, lme4, vegan, HSAUR3, carData and palmerpenguins; Python with scipy, pandas and statsmodels",
        version="R %s; scipy %s, pandas %s, statsmodels %s"
        % (R["version"], scipy.__version__, pd.__version__, statsmodels.__version__),
        command="Rscript printed-models.R out.json && python3 printed-models.py out.json ../printed-models.json",
        date="2026-12-01",
        sets=R["sets"],
        cases=kept,
    ),
    open(sys.argv[2], "w"),
    ensure_ascii=False,
    separators=(",", ":"),
)
