# Right figures of fitted models and of comparisons of many, as R prints them and as journals set them, of open data sets of
# R packages (Debian: r-cran-cardata, palmerpenguins, lme4, vegan, HSAUR3, MASS, nlme); for printed-models.py.
suppressPackageStartupMessages({library(MASS);library(nlme);library(lme4);library(HSAUR3);library(vegan);library(jsonlite)})
options(width=80, digits=7, scipen=0)
get1 <- function(n,p){e<-new.env();data(list=n,package=p,envir=e);e[[n]]}
S <- list()
cl <- function(x) sub('^weight$','mass',gsub('[._]','',x)); add <- function(name,d,kinds,measures){ d <- as.data.frame(d)[,c(names(kinds),names(measures))]; names(d)<-cl(names(d)); if(length(kinds)) names(kinds)<-cl(names(kinds)); names(measures)<-cl(names(measures)); d <- d[complete.cases(d),]; d[names(kinds)] <- lapply(d[names(kinds)],function(x) factor(as.character(x), ordered=FALSE)); S[[name]] <<- list(name=name,d=d,kinds=kinds,measures=measures)}
add('prestige',get1('Prestige','carData'),c(type='Type'),c(education='Education (years)',income='Income ($)',prestige='Prestige',women='Women (%)'))
add('salaries',get1('Salaries','carData'),c(rank='Rank',discipline='Discipline',sex='Sex'),c(yrs.service='Service (years)',salary='Salary ($)'))
pp <- get1('penguins','palmerpenguins')
add('penguins',pp,c(species='Species',island='Island',sex='Sex'),c(bill_length_mm='Bill length (mm)',bill_depth_mm='Bill depth (mm)',flipper_length_mm='Flipper length (mm)',body_mass_g='Body mass (g)'))
add('baumann',get1('Baumann','carData'),c(group='Group'),c(pretest.1='Pretest',post.test.1='Posttest',post.test.3='Posttest three'))
add('moore',get1('Moore','carData'),c(partner.status='Partner status',fcategory='Category'),c(conformity='Conformity',fscore='Score'))
data(dune.env); add('dune',dune.env,c(Management='Management',Use='Use'),c(A1='Soil thickness (cm)'))
add('cake',lme4::cake,c(recipe='Recipe',temperature='Temperature'),c(angle='Angle (deg)'))
add('oats',MASS::oats,c(V='Variety',N='Nitrogen',B='Block'),c(Y='Yield'))
h<-MASS::hills; h$record<-NULL; add('hills',h,c(),c(dist='Distance (miles)',climb='Climb (ft)',time='Time (min)'))
add('attitude',attitude,c(),c(rating='Rating',complaints='Complaints',learning='Learning',raises='Raises'))
ep<-MASS::epil; add('epil',ep[ep$period==4,],c(trt='Treatment'),c(y='Seizures',base='Baseline',age='Age (years)'))
add('plasma',HSAUR3::plasma,c(ESR='ESR'),c(fibrinogen='Fibrinogen',globulin='Globulin'))
add('chick',{d<-ChickWeight[ChickWeight$Time==21,];d},c(Diet='Diet'),c(weight='Weight (g)'))
add('leuk',MASS::leuk,c(ag='Ag'),c(wbc='Cells',time='Time (weeks)'))
add('stack',stackloss,c(),c(stack.loss='Loss',Air.Flow='Air flow',Water.Temp='Water temperature'))
cases <- list()
case <- function(hand,form,set,table=NULL,rows=NULL) cases[[length(cases)+1]] <<- list(hand=hand,form=form,set=set,rows=if(is.null(rows)) list() else rows,table=table)
cap <- function(x) paste(capture.output(x),collapse='\n')
f <- function(x,d=2) formatC(x,digits=d,format='f')
mi <- function(s) sub('^-','\u2212',s)
nz <- function(s) sub('^(-?)0\\.','\\1.',s)
P <- function(p,d=3,eq='= ',sym='p ',lead=FALSE){ z <- function(s) if(lead) s else nz(s); ifelse(p<.001,paste0(sym,'< ',z('0.001')),paste0(sym,eq,z(f(p,d))))}
Pc <- function(p,lead=FALSE) ifelse(p<.001,if(lead)'<0.001' else '<.001',if(lead) f(p,3) else nz(f(p,3)))
stars <- function(p) ifelse(p<.001,'***',ifelse(p<.01,'**',ifelse(p<.05,'*','')))
de <- function(s) gsub('.',',',s,fixed=TRUE)
tab <- function(m,sep='\t') paste(apply(m,1,paste,collapse=sep),collapse='\n')
blank <- function(m){ m<-as.matrix(m); w<-apply(nchar(m),2,max); pad<-function(t,w,l) paste0(if(!l) strrep(' ',w-nchar(t)) else '',t,if(l) strrep(' ',w-nchar(t)) else ''); paste(apply(m,1,function(r) sub(' +$','',paste(sapply(seq_along(r),function(i) pad(r[i],w[i],i==1)),collapse='   '))),collapse='\n')}
txt <- function(hand,form,set,s,attr='') case(hand,form,set,rows=list(list(quantity='statistic',printed=s,attribute=attr)))
for (s in S) { d<-s$d; n<-s$name; ms<-names(s$measures); ks<-names(s$kinds); lab<-s$measures
  base <- function(x) sub(' \\(.*','',lab[[x]])
  y<-ms[1]
  fits <- list()
  if(length(ms)>=2) fits$lm1 <- lm(as.formula(paste(y,'~',ms[2])),d)
  if(length(ms)>=3) fits$lm2 <- lm(as.formula(paste(y,'~',ms[2],'+',ms[3])),d)
  if(length(ks)>=1) fits$lmf <- lm(as.formula(paste(y,'~',ks[1],if(length(ms)>1) paste('+',ms[2]) else '')),d)
  if(length(ks)>=2) fits$lmff <- lm(as.formula(paste(y,'~',ks[1],'+',ks[2])),d)
  for (k in names(fits)) { m<-fits[[k]]; sm<-summary(m); co<-coef(sm); if(any(is.na(coef(m)))) next
    m$call$data <- as.name('d'); m$call$formula <- formula(m); sm<-summary(m)
    case('Rm',paste0('summary.',k),n,cap(print(sm)))
    case('Rm',paste0('coef.',k),n,cap(print(coef(sm))))
    case('Rm',paste0('printcoef.',k),n,cap(printCoefmat(coef(sm))))
    case('Rm',paste0('anova.',k),n,cap(print(anova(m))))
    case('Rm',paste0('confint.',k),n,cap(print(confint(m))))
    case('Rm',paste0('lm.',k),n,cap(print(m)))
    case('Rm',paste0('drop1.',k),n,cap(print(drop1(m,test='F'))))
    fs<-sm$fstatistic; pf<-pf(fs[1],fs[2],fs[3],lower.tail=FALSE); ci<-confint(m)
    nm<-rownames(co); nm[1]<-'Intercept'; nm<-gsub('_',' ',nm)
    B<-f(co[,1],3);SE<-f(co[,2],3);T<-f(co[,3]);p<-co[,4]
    if (all(abs(co[,2])>.02)) {
    case('jour',paste0('apa.',k),n,paste0('Table 2. Regression of ',base(y),'\n',tab(rbind(c('Predictor','B','SE','t','p'),cbind(nm,mi(B),SE,mi(T),Pc(p)))),'\nNote. R² = ',nz(f(sm$r.squared)),', F(',fs[2],', ',fs[3],') = ',f(fs[1]),', ',P(pf),'.'))
    case('jour',paste0('ci.',k),n,paste0(base(y),'\n',blank(rbind(c('Variable','Estimate','95% CI','P value'),cbind(nm,f(co[,1]),paste0(f(ci[,1]),' to ',f(ci[,2])),Pc(p,TRUE))))))
    case('jour',paste0('bci.',k),n,tab(rbind(c('Term','β (95% CI)','P'),cbind(nm,paste0(f(co[,1],2),' (',f(ci[,1],2),', ',f(ci[,2],2),')'),Pc(p,TRUE)))))
    case('jour',paste0('bse.',k),n,tab(rbind(c('',paste0('Model 1 (n = ',nobs(m),')')),cbind(nm,paste0(B,stars(p),' (',SE,')')),c('R²',f(sm$r.squared,3)),c('Adjusted R²',f(sm$adj.r.squared,3)),c('F',paste0(f(fs[1]),stars(pf))))))
    case('jour',paste0('de.',k),n,paste0('Tabelle 3: Regression\n',tab(rbind(c('Prädiktor','B','SF','T','p'),cbind(nm,de(B),de(SE),de(T),ifelse(p<.001,'< 0,001',de(f(p,3))))),';'),'\nR² = ',de(f(sm$r.squared)),'; F(',fs[2],'; ',fs[3],') = ',de(f(fs[1]))))
    }
    for (i in 2:min(nrow(co),3)) { if(abs(co[i,2])<.02) next
      txt('txt',paste0('b1.',k),n,paste0('b = ',mi(f(co[i,1])),', SE = ',f(co[i,2]),', t(',m$df.residual,') = ',mi(f(co[i,3])),', ',P(p[i])))
      txt('txt',paste0('b2.',k),n,paste0('β = ',mi(f(co[i,1])),', 95% CI [',mi(f(ci[i,1])),', ',mi(f(ci[i,2])),'], ',P(p[i])))
      txt('txt',paste0('b3.',k),n,paste0('B = ',f(co[i,1]),' (SE ',f(co[i,2]),'; p ',ifelse(p[i]<.001,'< 0.001',paste0('= ',f(p[i],3))),')'))
    }
    txt('txt',paste0('r2.',k),n,paste0('R² = ',nz(f(sm$r.squared)),', F(',fs[2],', ',fs[3],') = ',f(fs[1]),', ',P(pf)))
    txt('txt',paste0('r2a.',k),n,paste0('F(',fs[2],', ',fs[3],') = ',f(fs[1]),', ',P(pf),', R² = ',nz(f(sm$r.squared,3)),', adjusted R² = ',nz(f(sm$adj.r.squared,3))))
    txt('txt',paste0('r2b.',k),n,paste0('adj. R2 = ',f(sm$adj.r.squared),', F',fs[2],',',fs[3],' = ',f(fs[1]),', p ',ifelse(pf<.001,'< 0.001',paste0('= ',f(pf,3)))))
  }
  if(length(fits)>=2 && !is.null(fits$lm1) && !is.null(fits$lm2)) {a<-anova(fits$lm1,fits$lm2); case('Rm','anova2',n,cap(print(a))); txt('txt','dr2',n,paste0('ΔF(',a$Df[2],', ',a$Res.Df[2],') = ',f(a$F[2]),', ',P(a$`Pr(>F)`[2])))}
  # logistic and poisson
  if(length(ks)>=1 && nlevels(d[[ks[length(ks)]]])==2) { k<-ks[length(ks)]; g<-suppressWarnings(glm(as.formula(paste(k,'~',paste(ms[1:min(2,length(ms))],collapse='+'))),binomial,d)); if(g$converged && max(abs(coef(summary(g))[,2]))<50){
    g$call$data<-as.name('d'); sg<-summary(g); case('Rm','glm',n,cap(print(sg))); case('Rm','anovaglm',n,cap(print(anova(g,test='Chisq'))))
    co<-coef(sg);lo<-co[,1]-1.959964*co[,2];hi<-co[,1]+1.959964*co[,2];nm<-gsub('_',' ',rownames(co));nm[1]<-'Constant'
    if(all(co[-1,2]>.005)){
    case('jour','or',n,tab(rbind(c('Variable','OR (95% CI)','P value'),cbind(nm[-1],paste0(f(exp(co[-1,1])),' (',f(exp(lo[-1])),'–',f(exp(hi[-1])),')'),Pc(co[-1,4],TRUE)))))
    case('jour','or2',n,tab(rbind(c('Variable','OR','95% CI','P'),cbind(nm[-1],f(exp(co[-1,1]),3),paste0(f(exp(lo[-1]),3),'-',f(exp(hi[-1]),3)),Pc(co[-1,4],TRUE)))))
    case('jour','wald',n,tab(rbind(c('','B','S.E.','Wald','df','Sig.','Exp(B)'),cbind(nm,f(co[,1],3),f(co[,2],3),f(co[,3]^2,3),'1',f(co[,4],3),f(exp(co[,1]),3)))))
    for(i in 2:nrow(co)){ txt('txt','or',n,paste0('OR = ',f(exp(co[i,1])),', 95% CI [',f(exp(lo[i])),', ',f(exp(hi[i])),'], ',P(co[i,4])))
      txt('txt','orz',n,paste0('b = ',mi(f(co[i,1])),', SE = ',f(co[i,2]),', z = ',mi(f(co[i,3])),', ',P(co[i,4])))
      txt('txt','wald',n,paste0('Wald χ²(1) = ',f(co[i,3]^2),', ',P(co[i,4])))
      txt('txt','aor',n,paste0('adjusted odds ratio, ',f(exp(co[i,1])),' (95% CI, ',f(exp(lo[i])),'-',f(exp(hi[i])),')')) } }
    lr<-g$null.deviance-g$deviance; dl<-g$df.null-g$df.residual; txt('txt','lr',n,paste0('likelihood ratio χ²(',dl,') = ',f(lr),', ',P(pchisq(lr,dl,lower.tail=FALSE))))
  }}
  for (k in ks) for (y in ms) { g<-d[[k]]; if(nlevels(g)<2 || any(table(g)<3)) next
    a<-aov(as.formula(paste(y,'~',k)),d); sa<-summary(a)[[1]]; att<-paste0(y,'; ',k)
    case('Rm','aov1',n,cap(print(summary(a)))); 
    ss<-sa[['Sum Sq']];df<-sa[['Df']];msq<-sa[['Mean Sq']];F<-sa[['F value']][1];p<-sa[['Pr(>F)']][1];et<-ss[1]/sum(ss)
    case('jour','anova.apa',n,tab(rbind(c('Source','SS','df','MS','F','p','η²p'),c(lab[[y]],f(ss[1]),df[1],f(msq[1]),f(F),Pc(p),nz(f(et))),c('Error',f(ss[2]),df[2],f(msq[2]),'','',''),c('Total',f(sum(ss)),sum(df),'','','',''))))
    case('jour','anova.de',n,tab(rbind(c('Quelle','QS','FG','MQ','F','p'),de(c('zwischen Gruppen',f(ss[1]),df[1],f(msq[1]),f(F,3),ifelse(p<.001,'<0.001',f(p,3)))),de(c('innerhalb',f(ss[2]),df[2],f(msq[2]),'','')),de(c('gesamt',f(sum(ss)),sum(df),'','',''))),';'))
    case('jour','anova.fr',n,blank(rbind(c('Source','ddl','SC','CM','F','P'),de(c('Facteur',df[1],f(ss[1]),f(msq[1]),f(F),f(p,4))),de(c('Résidu',df[2],f(ss[2]),f(msq[2]),'-','-')))))
    txt('txt','fpe',n,paste0('F(',df[1],', ',df[2],') = ',f(F),', ',P(p),', partial η² = ',nz(f(et))),att)
    txt('txt','fms',n,paste0('F(',df[1],', ',df[2],') = ',f(F),', MSE = ',f(msq[2]),', ',P(p)),att)
    txt('txt','fom',n,paste0('F(',df[1],',',df[2],')=',f(F,1),'; p',ifelse(p<.001,'<0.001',paste0('=',f(p,3))),'; ω²=',f(max(0,(ss[1]-df[1]*msq[2])/(sum(ss)+msq[2])),2)),att)
    if(nlevels(g)>2){ tk<-TukeyHSD(a); case('Rm','tukey',n,cap(print(tk)))
      case('Rm','pairt',n,cap(print(pairwise.t.test(d[[y]],g)))); case('Rm','pairtn',n,cap(print(pairwise.t.test(d[[y]],g,p.adjust.method='none'))))
      case('Rm','pairw',n,cap(print(suppressWarnings(pairwise.wilcox.test(d[[y]],g,p.adjust.method='bonferroni',exact=FALSE)))))
      m<-tk[[1]]; case('jour','posthoc',n,tab(rbind(c('Comparison','Mean difference','95% CI','p (Tukey)'),cbind(sub('-',' – ',rownames(m)),mi(f(m[,1])),paste0('[',mi(f(m[,2])),', ',mi(f(m[,3])),']'),Pc(m[,4])))))
      case('jour','posthoc2',n,tab(rbind(c('(I)','(J)','Mean Difference (I-J)','Lower','Upper','Sig.'),cbind(sub('-.*','',rownames(m)),sub('.*-','',rownames(m)),f(m[,1],3),f(m[,2],3),f(m[,3],3),f(m[,4],3)))))
      txt('txt','tukeyt',n,paste0('mean difference = ',mi(f(m[1,1])),', 95% CI [',mi(f(m[1,2])),', ',mi(f(m[1,3])),'], p_adj ',ifelse(m[1,4]<.001,'< .001',paste0('= ',nz(f(m[1,4],3))))))
    }
    case('Rm','bartlett',n,cap(print(bartlett.test(d[[y]],g)))); case('Rm','fligner',n,cap(print(fligner.test(d[[y]],g)))); case('Rm','oneway',n,cap(print(oneway.test(d[[y]]~g))))
    case('Rm','modeltables',n,cap(print(model.tables(a,'means'),digits=4)))
    mm<-tapply(d[[y]],g,mean);sd<-tapply(d[[y]],g,sd);nn<-tapply(d[[y]],g,length); se<-sd/sqrt(nn)
    case('jour','table1f',n,tab(rbind(c('Group','n','M','SD','F','p'),cbind(names(mm),nn,f(mm),f(sd),c(f(F),rep('',length(mm)-1)),c(Pc(p),rep('',length(mm)-1)))))) 
    case('jour','msd',n,blank(rbind(c(base(y),paste0(names(mm),' (n=',nn,')'),'P'),c('mean (SD)',paste0(f(mm,1),' (',f(sd,1),')'),f(p,3)))))
    case('jour','lsmean',n,tab(rbind(c(k,'N','Mean','Std. Error','95% LCL','95% UCL'),cbind(names(mm),nn,f(mm,3),f(se,3),f(mm-qt(.975,nn-1)*se,3),f(mm+qt(.975,nn-1)*se,3)))))
    q<-sapply(split(d[[y]],g),quantile); case('jour','fivenum',n,tab(rbind(c('','Min','Q1','Median','Q3','Max'),cbind(colnames(q),t(apply(q,c(1,2),f,1))))))
    case('Rm','bysumm',n,cap(print(aggregate(d[[y]],list(g),function(x) c(mean=mean(x),sd=sd(x),n=length(x))),digits=4)))
    case('Rm','statsby',n,cap(print(data.frame(n=as.integer(nn),mean=as.numeric(mm),sd=as.numeric(sd),se=as.numeric(se),row.names=names(mm)),digits=5)))
  }
  if(length(ks)>=2){ for(y in ms){ a<-aov(as.formula(paste(y,'~',ks[1],'*',ks[2])),d); if(any(is.na(coef(a)))) next; sa<-summary(a); case('Rm','aov2',n,cap(print(sa))); x<-sa[[1]]; nr<-nrow(x); nm<-trimws(rownames(x)); nm<-gsub(':',' × ',nm)
     case('jour','anova2',n,tab(rbind(c('Effect','df','SS','MS','F','p'),cbind(nm,x$Df,f(x[['Sum Sq']]),f(x[['Mean Sq']]),c(f(x[['F value']][-nr]),''),c(Pc(x[['Pr(>F)']][-nr]),'')))))
     case('jour','anova2df',n,tab(rbind(c('Effect','F','df','p'),cbind(nm[-nr],f(x[['F value']][-nr]),paste0(x$Df[-nr],', ',x$Df[nr]),Pc(x[['Pr(>F)']][-nr])))))
     for(i in seq_len(nr-1)) txt('txt','eff',n,paste0('F(',x$Df[i],', ',x$Df[nr],') = ',f(x[['F value']][i]),', ',P(x[['Pr(>F)']][i]),', ηp² = ',nz(f(x[['Sum Sq']][i]/(x[['Sum Sq']][i]+x[['Sum Sq']][nr]))))) }
    t2<-table(d[[ks[1]]],d[[ks[2]]]); ct<-suppressWarnings(chisq.test(t2,correct=FALSE)); v<-sqrt(ct$statistic/(sum(t2)*(min(dim(t2))-1)))
    case('Rm','xtsummary',n,cap(print(summary(xtabs(as.formula(paste('~',ks[1],'+',ks[2])),d))))); case('Rm','addm',n,cap(print(addmargins(t2)))); case('Rm','propm',n,cap(print(round(prop.table(t2,1),3)))); case('Rm','chisqexp',n,cap(print(ct)))
    txt('txt','chiv',n,paste0('χ²(',ct$parameter,', N = ',sum(t2),') = ',f(ct$statistic),', ',P(ct$p.value),', V = ',nz(f(v))),paste0(ks[1],'; ',ks[2]))
    pc<-100*prop.table(t2,2); case('jour','cross',n,tab(rbind(c('',paste0(colnames(t2),', n (%)'),'Total'),cbind(rownames(t2),matrix(paste0(t2,' (',f(pc,1),')'),nrow(t2)),rowSums(t2)),c('Total',colSums(t2),sum(t2)))))
  }
  if(length(ms)>=3){ C<-cor(d[ms]); nn<-nrow(d); pv<-outer(ms,ms,Vectorize(function(i,j) if(i==j) NA else cor.test(d[[i]],d[[j]])$p.value)); 
    low<-matrix('',length(ms),length(ms)); for(i in seq_along(ms)) for(j in seq_along(ms)) low[i,j]<-if(i==j)'–' else if(j<i) paste0(nz(mi(f(C[i,j]))),stars(pv[i,j])) else ''
    case('jour','cormat',n,paste0('Table 1. Means, standard deviations and correlations (N = ',nn,')\n',tab(rbind(c('Variable','M','SD',seq_along(ms)),cbind(paste0(seq_along(ms),'. ',sapply(ms,base)),f(colMeans(d[ms])),f(sapply(d[ms],sd)),low))),'\n* p < .05, ** p < .01, *** p < .001'))
    case('Rm','cor',n,cap(print(C,digits=3))) ; case('Rm','summarydf',n,cap(print(summary(d[ms])))) ; ft<-friedman.test(as.matrix(d[ms])); case('Rm','friedman',n,cap(print(ft)))
    case('jour','desc',n,tab(rbind(c('Variable','N','Minimum','Maximum','Mean','Std. Deviation'),cbind(sapply(ms,base),nn,f(sapply(d[ms],min),1),f(sapply(d[ms],max),1),f(sapply(d[ms],mean),3),f(sapply(d[ms],sd),4)))))
    case('jour','descq',n,tab(rbind(c('Variable','Mean ± SD','Median (IQR)','Range'),cbind(sapply(ms,base),paste0(f(colMeans(d[ms]),1),' ± ',f(sapply(d[ms],sd),1)),paste0(f(sapply(d[ms],median),1),' (',f(sapply(d[ms],IQR),1),')'),paste0(f(sapply(d[ms],min),1),'–',f(sapply(d[ms],max),1))))))
  }
}
# mixed models and others
suppressMessages({
m<-lmer(Reaction~Days+(Days|Subject),sleepstudy,REML=FALSE); m0<-lmer(Reaction~1+(Days|Subject),sleepstudy,REML=FALSE)
case('Rm','lmer','none',cap(print(summary(m)))); case('Rm','anovalmer','none',cap(print(anova(m0,m)))); case('Rm','lmerprint','none',cap(print(m))); case('Rm','anovalmer1','none',cap(print(anova(m))))
m<-lmer(angle~recipe*temperature+(1|recipe:replicate),cake); case('Rm','lmer','none',cap(print(summary(m),correlation=FALSE))); case('Rm','anovalmer1','none',cap(print(anova(m))))
m<-lmer(diameter~1+(1|plate)+(1|sample),Penicillin); case('Rm','lmer','none',cap(print(summary(m))))
m<-lme(distance~age*Sex,Orthodont,random=~1|Subject); case('Rm','lme','none',cap(print(summary(m)))); case('Rm','anovalme','none',cap(print(anova(m))))
m<-lme(yield~nitro,Oats,random=~1|Block/Variety); case('Rm','lme','none',cap(print(summary(m)))); case('Rm','anovalme','none',cap(print(anova(m))))
m<-glmer(cbind(incidence,size-incidence)~period+(1|herd),cbpp,binomial); case('Rm','glmer','none',cap(print(summary(m))))
m<-glm(y~lbase*trt+lage+V4,poisson,epil); case('Rm','glmp','none',cap(print(summary(m)))); case('Rm','anovaglm','none',cap(print(anova(m,test='Chisq'))))
m<-polr(Sat~Infl+Type+Cont,weights=Freq,data=housing,Hess=TRUE); case('Rm','polr','none',cap(print(summary(m))))
m<-nls(rate~Vm*conc/(K+conc),Puromycin,subset=state=='treated',start=c(Vm=200,K=.05)); case('Rm','nls','none',cap(print(summary(m))))
a<-aov(Y~N*V+Error(B/V),MASS::oats); case('Rm','aovE','none',cap(print(summary(a))))
case('Rm','mantel','none',cap(print(mantelhaen.test(UCBAdmissions)))); case('Rm','poisson','none',cap(print(poisson.test(c(11,6+8+7),c(800,1083+1050+878))))); case('Rm','quade','none',cap(print(quade.test(as.matrix(attitude[1:7,1:4]))))); case('Rm','trend','none',cap(print(prop.trend.test(c(15,10,5),c(30,30,30)))))
case('Rm','power','none',cap(print(power.t.test(n=20,delta=1,sd=1)))); case('Rm','box','none',cap(print(Box.test(lh,lag=1)))); case('Rm','ks','none',cap(print(ks.test(attitude$rating,'pnorm',mean(attitude$rating),sd(attitude$rating)))))
case('Rm','shapiro','none',cap(print(shapiro.test(attitude$rating)))); case('Rm','mood','none',cap(print(suppressWarnings(mood.test(leuk$time[leuk$ag=='present'],leuk$time[leuk$ag=='absent'])))))
case('Rm','loglm','none',cap(print(loglm(~Sat+Infl+Type,xtabs(Freq~Sat+Infl+Type,housing))))); 
case('Rm','adonis','none',cap({data(dune);set.seed(1);print(adonis2(dune~Management,dune.env,permutations=99))}))
})
out<-list(sets=lapply(S,function(s){d<-s$d;con<-textConnection('z','w',local=TRUE);write.csv(cbind(record=paste0(s$name,seq_len(nrow(d))),d),con,row.names=FALSE);close(con);list(name=s$name,csv=paste0(paste(z,collapse='\n'),'\n'),kinds=as.list(s$kinds),measures=as.list(s$measures))}),cases=cases)
names(out$sets)<-NULL
write(toJSON(c(list(version=as.character(getRversion())),out),auto_unbox=TRUE,null="null",digits=NA),commandArgs(TRUE)[1])
