# Open data sets and what R prints of tests of them, for printed-hands.py; seeded where a p is simulated.
set.seed(1)
suppressMessages({library(MASS);library(HSAUR3);library(boot);library(nlme);library(jsonlite)})
options(width=100)
S <- list()
add <- function(name, d, kinds, measures, labels) S[[name]] <<- list(d=d,kinds=kinds,measures=measures,labels=labels)
add("cats", cats, "Sex", c("Bwt","Hwt"), c(Sex="Sex",Bwt="Body weight (kg)",Hwt="Heart weight (g)"))
add("whiteside", whiteside, "Insul", c("Temp","Gas"), c(Insul="Insulation",Temp="Outside temperature (°C)",Gas="Gas use"))
p <- poisons; names(p) <- c("time","poison","treat"); add("poisons", p, c("poison","treat"), "time", c(poison="Poison",treat="Treatment",time="Survival time (h)"))
n <- nitrofen; n$dose <- factor(n$conc,labels=c("none","80 ug","160 ug","235 ug","310 ug")); add("nitrofen", n[,c("dose","brood1","brood2","brood3","total")], "dose", c("brood1","brood2","brood3","total"), c(dose="Dose",brood1="First brood",brood2="Second brood",brood3="Third brood",total="Offspring in all"))
m <- data.frame(Worker=paste0("W",as.character(Machines$Worker)),Machine=as.character(Machines$Machine),score=Machines$score); add("Machines", m, c("Worker","Machine"), "score", c(Worker="Worker",Machine="Machine",score="Score"))
o <- data.frame(Sex=as.character(Orthodont$Sex),distance=Orthodont$distance,age=Orthodont$age); add("Orthodont", o, "Sex", c("distance","age"), c(Sex="Sex",distance="Distance (mm)",age="Age (years)"))
f <- data.frame(litgen=paste0("g",foster$litgen),motgen=paste0("m",foster$motgen),litterWeight=foster$weight); add("foster", f, c("litgen","motgen"), "litterWeight", c(litgen="Litter genotype",motgen="Mother genotype",litterWeight="Litter weight (g)"))
w <- weightgain; names(w) <- c("source","type","gain"); add("weightgain", w, c("source","type"), "gain", c(source="Protein source",type="Protein level",gain="Weight gain (g)"))
b <- BtheB; names(b) <- c("drug","illness","therapy","pre","m2","m3","m5","m8"); add("BtheB", b[,c("drug","illness","therapy","pre","m2","m3")], c("drug","illness","therapy"), c("pre","m2","m3"), c(drug="Medication",illness="Length of illness",therapy="Therapy",pre="Score before",m2="Score after two months",m3="Score after three months"))
me <- boot::melanoma; me <- data.frame(state=factor(me$status,labels=c("died of it","alive","other cause")),sex=factor(me$sex,labels=c("female","male")),ulcer=factor(me$ulcer,labels=c("no ulcer","ulcer")),age=me$age,depth=me$thickness,days=me$time)
add("melanoma", me, c("state","sex","ulcer"), c("age","depth","days"), c(state="State",sex="Sex",ulcer="Ulceration",age="Age (years)",depth="Tumour depth (mm)",days="Survival (days)"))
v <- VA; v <- data.frame(cell=factor(v$cell,labels=c("squamous","small cell","adeno","large cell")),arm=factor(v$treat,labels=c("standard","test")),stime=v$stime,age=v$age,karn=v$Karn)
add("VA", v, c("cell","arm"), c("stime","age","karn"), c(cell="Cell type",arm="Arm",stime="Survival (days)",age="Age",karn="Karnofsky score"))
u <- UScereal; u <- data.frame(maker=factor(u$mfr,labels=c("maker G","maker K","maker N","maker P","maker Q","maker R")),shelf=paste("shelf",u$shelf),calories=round(u$calories,1),protein=round(u$protein,2),roughage=round(u$fibre,2))
add("UScereal", u, c("maker","shelf"), c("calories","protein","roughage"), c(maker="Maker",shelf="Shelf",calories="Energy (kcal)",protein="Protein (g)",roughage="Roughage (g)"))
r <- data.frame(sex=as.character(RatPupWeight$sex),dosing=as.character(RatPupWeight$Treatment),pup=RatPupWeight$weight); add("RatPup", r, c("sex","dosing"), "pup", c(sex="Sex",dosing="Dosing",pup="Pup weight (g)"))
ch <- data.frame(sex=as.character(channing$sex),outcome=factor(channing$cens,labels=c("left","died")),entry=channing$entry,stay=channing$time); add("channing", ch, c("sex","outcome"), c("entry","stay"), c(sex="Sex",outcome="Outcome",entry="Age at entry (months)",stay="Stay (months)"))
L <- data.frame(study=paste("study",as.character(Lanza$study)),arm=as.character(Lanza$treatment),class=paste("class",as.character(Lanza$classification))); add("Lanza", L, c("study","arm","class"), character(), c(study="Study",arm="Arm of trial",class="Class"))
add("trees", trees, character(), c("Girth","Height","Volume"), c(Girth="Girth (in)",Height="Height (ft)",Volume="Timber volume"))
out <- list()
cap <- function(x) paste(capture.output(print(x)),collapse="\n")
emit <- function(set, form, text, ...) out[[length(out)+1]] <<- list(set=set,form=form,text=text,spec=list(...))
sets <- list()
for (name in names(S)) { s <- S[[name]]; d <- s$d
  for (k in s$kinds) d[[k]] <- as.character(d[[k]])
  d <- d[,c(s$kinds,s$measures),drop=FALSE]
  tc <- textConnection("csvl","w"); write.csv(cbind(record=paste0(name,seq_len(nrow(d))),d),tc,row.names=FALSE,na=""); close(tc)
  sets[[name]] <- list(name=name,csv=paste(csvl,collapse="\n"),kinds=as.list(s$labels[s$kinds]),measures=as.list(s$labels[s$measures]))
  for (m in s$measures) { x <- d[[m]]
    emit(name,"summary",cap(summary(x)),measure=m)
    emit(name,"quantile",cap(quantile(x,na.rm=TRUE)),measure=m)
    if (length(x)<5000) emit(name,"shapiro",cap(shapiro.test(x)),measure=m)
    for (k in s$kinds) { g <- factor(d[[k]]); ok <- !is.na(x); fo <- as.formula(paste(m,"~",k))
      emit(name,"tapply",cap(round(tapply(x,g,mean,na.rm=TRUE),3)),measure=m,by=k)
      emit(name,"aggregate",cap(aggregate(fo,d,function(z) c(mean=mean(z),sd=sd(z),n=length(z)))),measure=m,by=k)
      emit(name,"bysummary",cap(do.call(rbind,tapply(x,g,function(z) round(c(summary(z)[1:6]),3)))),measure=m,by=k)
      dd <- d[ok,]; dd[[k]] <- factor(dd[[k]])
      emit(name,"aov",cap(summary(aov(fo,dd))),measure=m,by=k)
      emit(name,"lm",cap(summary(lm(fo,dd))),measure=m,by=k)
      emit(name,"anova",cap(anova(lm(fo,dd))),measure=m,by=k)
      emit(name,"kruskal",cap(kruskal.test(fo,dd)),measure=m,by=k)
      emit(name,"oneway",cap(oneway.test(fo,dd)),measure=m,by=k)
      emit(name,"bartlett",cap(bartlett.test(fo,dd)),measure=m,by=k)
      emit(name,"tukey",cap(TukeyHSD(aov(fo,dd))),measure=m,by=k)
      if(nlevels(g)>2) emit(name,"pairwise",cap(pairwise.t.test(dd[[m]],dd[[k]])),measure=m,by=k)
      if (nlevels(g)==2) {
        emit(name,"t.welch",cap(t.test(fo,dd)),measure=m,by=k)
        emit(name,"t.pooled",cap(t.test(fo,dd,var.equal=TRUE)),measure=m,by=k)
        emit(name,"wilcox",cap(suppressWarnings(wilcox.test(fo,dd))),measure=m,by=k)
        emit(name,"wilcox.ci",cap(suppressWarnings(wilcox.test(fo,dd,exact=FALSE,correct=FALSE))),measure=m,by=k)
        emit(name,"var",cap(var.test(fo,dd)),measure=m,by=k)
        emit(name,"ks",cap(suppressWarnings(ks.test(fo,dd))),measure=m,by=k)
        emit(name,"ansari",cap(suppressWarnings(mood.test(fo,dd))),measure=m,by=k)
      }
    }
  }
  ms <- s$measures
  if (length(ms)>1) for (i in 1:(length(ms)-1)) for (j in (i+1):length(ms)) for (me in c("pearson","spearman","kendall")) {
    emit(name,paste0("cor.",me),cap(suppressWarnings(cor.test(d[[ms[i]]],d[[ms[j]]],method=me))),measure=ms[i],with=ms[j])
    if(me=="pearson") { emit(name,"t.paired",cap(t.test(d[[ms[i]]],d[[ms[j]]],paired=TRUE)),measure=ms[i],with=ms[j])
      emit(name,"lmxy",cap(summary(lm(d[[ms[i]]]~d[[ms[j]]]))),measure=ms[i],with=ms[j])
      emit(name,"wilcox.paired",cap(suppressWarnings(wilcox.test(d[[ms[i]]],d[[ms[j]]],paired=TRUE))),measure=ms[i],with=ms[j]) }
  }
  if (length(ms)>2) emit(name,"cormat",cap(round(cor(d[,ms],use="complete.obs"),3)))
  ks <- s$kinds
  if (length(ks)) for (k in ks) { t1 <- table(d[[k]])
    emit(name,"table1",cap(t1),by=k); emit(name,"prop1",cap(round(prop.table(t1),3)),by=k)
    emit(name,"chisq1",cap(suppressWarnings(chisq.test(t1))),by=k)
    if(length(t1)==2){ emit(name,"binom",cap(binom.test(as.vector(t1))),by=k); emit(name,"prop.1",cap(prop.test(t1[[1]],sum(t1))),by=k)} }
  if (length(ks)>1) for (i in 1:(length(ks)-1)) for (j in (i+1):length(ks)) { t2 <- table(d[[ks[i]]],d[[ks[j]]],dnn=c(ks[i],ks[j]))
    emit(name,"table2",cap(t2),rows=ks[i],columns=ks[j])
    emit(name,"table2m",cap(addmargins(t2)),rows=ks[i],columns=ks[j])
    emit(name,"prop2",cap(round(prop.table(t2,1),3)),rows=ks[i],columns=ks[j])
    emit(name,"prop2c",cap(round(100*prop.table(t2,2),1)),rows=ks[i],columns=ks[j])
    emit(name,"ftable",cap(ftable(t2)),rows=ks[i],columns=ks[j])
    emit(name,"chisq",cap(suppressWarnings(chisq.test(t2))),rows=ks[i],columns=ks[j])
    emit(name,"fisher",cap((if(sum(t2)>80&&nrow(t2)*ncol(t2)>6) fisher.test(t2,simulate.p.value=TRUE,B=1999) else fisher.test(t2,workspace=2e6))),rows=ks[i],columns=ks[j])
    if(nrow(t2)==2&&ncol(t2)==2){ emit(name,"prop.test",cap(suppressWarnings(prop.test(t2))),rows=ks[i],columns=ks[j])
      emit(name,"mcnemar",cap(mcnemar.test(t2)),rows=ks[i],columns=ks[j]) }
    emit(name,"summary.table",cap(summary(t2)),rows=ks[i],columns=ks[j])
    if (length(ms)) { fo <- as.formula(paste(ms[1],"~",ks[i],"*",ks[j])); dd<-d[complete.cases(d[,c(ms[1],ks)]),]
      emit(name,"aov2",cap(summary(aov(fo,dd))),measure=ms[1],rows=ks[i],columns=ks[j])
      emit(name,"xtabsmean",cap(round(tapply(dd[[ms[1]]],list(dd[[ks[i]]],dd[[ks[j]]]),mean),2)),measure=ms[1],rows=ks[i],columns=ks[j]) }
  }
}
write(toJSON(list(version=as.character(getRversion()),sets=unname(sets),console=out),auto_unbox=TRUE,digits=NA),commandArgs(TRUE)[1])
