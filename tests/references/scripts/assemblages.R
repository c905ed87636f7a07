# Similarity, diversity, Mantel tests, permutational analysis of variance: package vegan and its data.
# Rscript tests/references/scripts/assemblages.R > tests/references/assemblages.json
suppressMessages({ library(jsonlite); library(vegan); library(MASS) })
num <- function(x) unname(as.numeric(x))
data(dune); data(dune.env); data(BCI); data(varespec); data(varechem)
m <- unname(as.matrix(dune))
share <- prop.table(m, 1)
chi <- { p <- share; w <- colSums(m) / sum(m); dist(sweep(p, 2, sqrt(w), "/")) }
similarity <- list(
  `brainerd-robinson` = 200 - 100 * num(dist(share, "manhattan")),
  `bray-curtis` = 1 - num(vegdist(dune, "bray")),
  `morisita-horn` = 1 - num(vegdist(dune, "horn")),
  jaccard = 1 - num(vegdist(dune, "jaccard", binary = TRUE)),
  `chi-square` = num(chi))
counts <- lapply(c(1, 7, 23, 50), function(i) {
  x <- num(BCI[i, ]); e <- estimateR(as.integer(BCI[i, ]))
  list(counts = x, richness = num(specnumber(x)), shannon = num(vegan::diversity(x)), simpson = num(vegan::diversity(x, "simpson")),
       evenness = num(vegan::diversity(x) / log(specnumber(x))), chao1 = num(e["S.chao1"]), rarefied50 = num(rarefy(BCI[i, ], 50)), rarefied200 = num(rarefy(BCI[i, ], 200))) })
d <- vegdist(dune, "bray"); g <- dune.env$Management
set.seed(1)
a <- adonis2(d ~ Management, data = dune.env, permutations = 9999)
b <- betadisper(d, g, type = "centroid"); s <- anosim(d, g, permutations = 9999)
dv <- vegdist(varespec); de <- dist(scale(varechem)); ph <- dist(varechem$pH)
mt <- mantel(dv, de, permutations = 9999); ms <- mantel(dv, de, method = "spearman", permutations = 999); mp <- mantel.partial(dv, de, ph, permutations = 9999)
cat(toJSON(list(tool = "R vegan", version = paste0(R.version.string, "; vegan ", packageVersion("vegan")),
  command = "Rscript tests/references/scripts/assemblages.R > tests/references/assemblages.json", date = as.character(Sys.Date()),
  dune = lapply(seq_len(nrow(m)), function(i) m[i, ]), similarity = similarity, diversity = counts,
  groups = as.integer(g) - 1L, bray = num(d),
  permanova = list(f = a$F[1], r2 = a$R2[1], within = a$SumOfSqs[2], total = a$SumOfSqs[3], p = a$`Pr(>F)`[1]),
  dispersion = list(distances = num(b$distances), f = anova(b)$`F value`[1], means = num(b$group.distances)),
  anosim = list(r = s$statistic, p = s$signif),
  mantel = list(species = num(dv), chemistry = num(de), ph = num(ph), r = mt$statistic, p = mt$signif, rank = ms$statistic, partial = mp$statistic, partialP = mp$signif)),
  auto_unbox = TRUE, digits = I(17)))
