/** What the methods of a report cite, by the short form that stands in the text; pages and volumes from memory where docs/methods does not give them. */
export const REFERENCES: Readonly<Record<string, string>> = {
  'Anderson 2001':
    'Anderson, M. J. 2001. A new method for non-parametric multivariate analysis of variance. Austral Ecology 26: 32–46.',
  'Bergsma 2013':
    'Bergsma, W. 2013. A bias-correction for Cramér’s V and Tschuprow’s T. Journal of the Korean Statistical Society 42: 323–328.',
  'Bray & Curtis 1957':
    'Bray, J. R. and Curtis, J. T. 1957. An ordination of the upland forest communities of southern Wisconsin. Ecological Monographs 27: 325–349.',
  'Brainerd 1951':
    'Brainerd, G. W. 1951. The place of chronological ordering in archaeological analysis. American Antiquity 16: 301–313.',
  'Campello et al. 2013':
    'Campello, R. J. G. B., Moulavi, D. and Sander, J. 2013. Density-based clustering based on hierarchical density estimates. PAKDD 2013, LNCS 7819: 160–172.',
  'Chao & Jost 2012':
    'Chao, A. and Jost, L. 2012. Coverage-based rarefaction and extrapolation. Ecology 93: 2533–2547.',
  'Cliff 1993':
    'Cliff, N. 1993. Dominance statistics: ordinal analyses to answer ordinal questions. Psychological Bulletin 114: 494–509.',
  'DeBoer et al. 1996':
    'DeBoer, W. R., Kintigh, K. and Rostoker, A. G. 1996. Ceramic seriation and site reoccupation in lowland South America. Latin American Antiquity 7: 263–278.',
  'Dunn 1964': 'Dunn, O. J. 1964. Multiple comparisons using rank sums. Technometrics 6: 241–252.',
  'Efron 1987':
    'Efron, B. 1987. Better bootstrap confidence intervals. Journal of the American Statistical Association 82: 171–185.',
  'Fisher 1935':
    'Fisher, R. A. 1935. The logic of inductive inference. Journal of the Royal Statistical Society 98: 39–82.',
  'Gower 1966':
    'Gower, J. C. 1966. Some distance properties of latent root and vector methods used in multivariate analysis. Biometrika 53: 325–338.',
  'Gower 1971':
    'Gower, J. C. 1971. A general coefficient of similarity and some of its properties. Biometrics 27: 857–871.',
  'Greenacre 1984':
    'Greenacre, M. J. 1984. Theory and Applications of Correspondence Analysis. London: Academic Press.',
  'Haberman 1973':
    'Haberman, S. J. 1973. The analysis of residuals in cross-classified tables. Biometrics 29: 205–220.',
  'Hartigan & Hartigan 1985':
    'Hartigan, J. A. and Hartigan, P. M. 1985. The dip test of unimodality. Annals of Statistics 13: 70–84.',
  'Hennig 2007':
    'Hennig, C. 2007. Cluster-wise assessment of cluster stability. Computational Statistics & Data Analysis 52: 258–271.',
  'Hesterberg 2015':
    'Hesterberg, T. C. 2015. What teachers should know about the bootstrap. The American Statistician 69: 371–386.',
  'Holm 1979':
    'Holm, S. 1979. A simple sequentially rejective multiple test procedure. Scandinavian Journal of Statistics 6: 65–70.',
  'Horn 1966':
    'Horn, H. S. 1966. Measurement of “overlap” in comparative ecological studies. The American Naturalist 100: 419–424.',
  'Hyndman & Fan 1996':
    'Hyndman, R. J. and Fan, Y. 1996. Sample quantiles in statistical packages. The American Statistician 50: 361–365.',
  'Jaccard 1901':
    'Jaccard, P. 1901. Étude comparative de la distribution florale dans une portion des Alpes et des Jura. Bulletin de la Société vaudoise des sciences naturelles 37: 547–579.',
  'Kaufman & Rousseeuw 1990':
    'Kaufman, L. and Rousseeuw, P. J. 1990. Finding Groups in Data. New York: Wiley.',
  'Kleene 1952': 'Kleene, S. C. 1952. Introduction to Metamathematics. Amsterdam: North-Holland.',
  'Kruskal & Wallis 1952':
    'Kruskal, W. H. and Wallis, W. A. 1952. Use of ranks in one-criterion variance analysis. Journal of the American Statistical Association 47: 583–621.',
  'Lloyd 1982':
    'Lloyd, S. P. 1982. Least squares quantization in PCM. IEEE Transactions on Information Theory 28: 129–137.',
  'Mann & Whitney 1947':
    'Mann, H. B. and Whitney, D. R. 1947. On a test of whether one of two random variables is stochastically larger than the other. Annals of Mathematical Statistics 18: 50–60.',
  'Mantel 1967':
    'Mantel, N. 1967. The detection of disease clustering and a generalized regression approach. Cancer Research 27: 209–220.',
  'Murtagh 1983':
    'Murtagh, F. 1983. A survey of recent advances in hierarchical clustering algorithms. The Computer Journal 26: 354–359.',
  'Phipson & Smyth 2010':
    'Phipson, B. and Smyth, G. K. 2010. Permutation p-values should never be zero. Statistical Applications in Genetics and Molecular Biology 9: 39.',
  'Robinson 1951':
    'Robinson, W. S. 1951. A method for chronologically ordering archaeological deposits. American Antiquity 16: 293–301.',
  'Ratcliffe 2000':
    'Ratcliffe, J. H. 2000. Aoristic analysis: the spatial interpretation of unspecific temporal events. International Journal of Geographical Information Science 14: 669–679.',
  'Rousseeuw 1987':
    'Rousseeuw, P. J. 1987. Silhouettes: a graphical aid to the interpretation and validation of cluster analysis. Journal of Computational and Applied Mathematics 20: 53–65.',
  'Silverman 1981':
    'Silverman, B. W. 1981. Using kernel density estimates to investigate multimodality. Journal of the Royal Statistical Society B 43: 97–99.',
  'Spearman 1904':
    'Spearman, C. 1904. The proof and measurement of association between two things. The American Journal of Psychology 15: 72–101.',
  'Vovk et al. 2005':
    'Vovk, V., Gammerman, A. and Shafer, G. 2005. Algorithmic Learning in a Random World. New York: Springer.',
  'Wilson 1927':
    'Wilson, E. B. 1927. Probable inference, the law of succession, and statistical inference. Journal of the American Statistical Association 22: 209–212.',
  'Clopper & Pearson 1934':
    'Clopper, C. J. and Pearson, E. S. 1934. The use of confidence or fiducial limits illustrated in the case of the binomial. Biometrika 26: 404–413.',
  'Brown et al. 2001':
    'Brown, L. D., Cai, T. T. and DasGupta, A. 2001. Interval estimation for a binomial proportion. Statistical Science 16: 101–133.',
  'Benjamini & Hochberg 1995':
    'Benjamini, Y. and Hochberg, Y. 1995. Controlling the false discovery rate. Journal of the Royal Statistical Society B 57: 289–300.',
  'Wu & Palmer 1994':
    'Wu, Z. and Palmer, M. 1994. Verb semantics and lexical selection. Proceedings of the 32nd Annual Meeting of the ACL: 133–138.',
};
