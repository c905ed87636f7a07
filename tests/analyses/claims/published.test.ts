import { describe, expect, it } from 'vitest';
import { check, type Row } from './claims.ts';

/**
 * Published worked tables and tests, as printed. Where no page is named they are typed from memory, from the
 * handbooks and from the printed output of R's examples, and confirmed by the arithmetic alone.
 */
interface Published {
  readonly name: string;
  readonly table?: string;
  readonly claims?: readonly Row[];
}

const statistic = (printed: string, more: Row = {}): Row => ({ quantity: 'statistic', printed, ...more });

const PUBLISHED: readonly Published[] = [
  {
    name: 'Student 1908, soporifics, in pairs (R: t.test of sleep)',
    claims: [statistic('t = -4.0621, df = 9, p-value = 0.002833')],
  },
  {
    name: 'The same after Welch (R: t.test of sleep)',
    claims: [statistic('t = -1.8608, df = 17.776, p-value = 0.07939')],
  },
  {
    name: 'Dobson 1983, weights of plants (R: anova of PlantGrowth)',
    table:
      ',Df,Sum Sq,Mean Sq,F value,Pr(>F)\ngroup,2,3.7663,1.8832,4.8461,0.01591 *\nResiduals,27,10.4921,0.3886,,\n',
  },
  {
    name: 'Tippett 1950, breaks of warp (R: anova of warpbreaks)',
    table:
      ',Df,Sum Sq,Mean Sq,F value,Pr(>F)\nwool,1,450.7,450.67,3.7653,0.0582130\ntension,2,2034.3,1017.13,8.4980,0.0006926\nwool:tension,2,1002.8,501.39,4.1891,0.0210442\nResiduals,48,5745.1,119.69,,\n',
  },
  {
    name: 'Snee 1974, hair by eyes',
    table:
      'Hair,Brown,Blue,Hazel,Green,Total\nBlack,68,20,15,5,108\nBrown,119,84,54,29,286\nRed,26,17,14,14,71\nBlond,7,94,10,16,127\nTotal,220,215,93,64,592\n',
    claims: [statistic('χ²(9, N = 592) = 138.29, p < .001, V = .28', { set: 'table' })],
  },
  {
    name: 'Dawson 1995, survivors by class',
    table:
      'Class,Aboard,Survived,%\n1st,325,203,62.5\n2nd,285,118,41.4\n3rd,706,178,25.2\nCrew,885,212,24.0\nTotal,2201,711,32.3\n',
  },
  {
    name: 'Bickel, Hammel & O’Connell 1975, admissions of men by department',
    table:
      'Department,Applicants,Admitted (%)\nA,825,512 (62 %)\nB,560,353 (63 %)\nC,325,120 (37 %)\nD,417,138 (33 %)\nE,191,53 (28 %)\nF,373,22 (6 %)\n',
  },
  {
    name: 'Mendel 1866, forms of the seed',
    table: 'Seed,n,%\nround,5474,74.74\nwrinkled,1850,25.26\nTotal,7324,100\n',
  },
  {
    name: 'Mendel 1866, two characters together',
    table: ',round,angular,Total\nyellow,315,101,416\ngreen,108,32,140\nTotal,423,133,556\n',
  },
  {
    name: 'Bortkiewicz 1898, deaths by the kick of a horse',
    table: 'Deaths,Corps-years\n0,109\n1,65\n2,22\n3,3\n4,1\nTotal,200\n',
  },
  {
    name: 'Darwin 1876, cross- and self-fertilised maize (Fisher 1935, section 17)',
    claims: [
      { quantity: 'n', set: 's', printed: '15' },
      { quantity: 'mean', set: 's', printed: '20.93' },
      { quantity: 'sd', set: 's', printed: '37.74' },
      { quantity: 'se', set: 's', printed: '9.746' },
      statistic('t(14) = 2.148, p = .0497'),
    ],
  },
  {
    name: 'Fisher 1936, irises',
    table:
      'Species,n,Mean,SD,Min,Max\nsetosa,50,5.006,0.352,4.3,5.8\nversicolor,50,5.936,0.516,4.9,7.0\nvirginica,50,6.588,0.636,4.9,7.9\nAll,150,5.843,0.828,4.3,7.9\n',
  },
  {
    name: 'Anscombe 1973, the first of four',
    claims: [{ quantity: 'correlation', printed: 'r(9) = .816, p = .002' }],
  },
  {
    name: 'Michelson 1879, speed of light less 299 000 km/s (Stigler 1977)',
    claims: [
      { quantity: 'n', set: 's', printed: '100' },
      { quantity: 'mean', set: 's', printed: '852.4' },
      { quantity: 'sd', set: 's', printed: '79.0' },
      { quantity: 'se', set: 's', printed: '7.9' },
    ],
  },
  {
    name: 'Physicians’ Health Study 1989, infarctions',
    table: 'Group,n,Infarctions,%\nAspirin,11037,139,1.26\nPlacebo,11034,239,2.17\n',
  },
  {
    name: 'Doll & Hill 1950, men with and without carcinoma',
    table:
      ',Smokers,Non-smokers,Total\nCarcinoma,647 (99.7 %),2 (0.3 %),649\nControls,622 (95.8 %),27 (4.2 %),649\n',
  },
  { name: 'R: chickwts', claims: [statistic('F(5, 65) = 15.365, p = 5.936e-10')] },
  {
    name: 'R: kruskal.test of airquality',
    claims: [statistic('Kruskal-Wallis chi-squared = 29.267, df = 4, p-value = 6.901e-06')],
  },
  {
    name: 'Hollander & Wolfe 1973, depression (R: wilcox.test)',
    claims: [statistic('V = 40, n = 9, p-value = 0.01953', { sided: 'one' })],
  },
  {
    name: 'Hollander & Wolfe 1973, permeability (R: wilcox.test)',
    claims: [statistic('W = 35, n1 = 10, n2 = 5, p-value = 0.1272', { sided: 'one' })],
  },
  {
    name: 'Hollander & Wolfe 1973, tuna (R: cor.test, Kendall)',
    claims: [{ quantity: 'correlation', test: 'tau', printed: 'tau = 0.4444444, n = 9, p-value = 0.1194' }],
  },
];

describe('published worked tables and tests', () => {
  it.each(PUBLISHED)('$name', ({ table, claims = [] }) => {
    const rows = claims.map((row, i) => ({ id: `c${i}`, ...row }));
    const found = check(
      rows.length === 0 ? [{ id: 'c', quantity: 'reading', printed: '1' }] : rows,
      table === undefined ? {} : { 'table.csv': table },
    );
    const against = found.judged.filter(({ verdict }) => verdict === 'differs' || verdict === 'cannot be');
    expect(against.map(({ figure, why }) => `${figure.id} ${figure.printed}: ${why}`)).toEqual([]);
    expect(found.judged.some(({ verdict }) => verdict.startsWith('agrees'))).toBe(true);
    expect(found.unread).toEqual([]);
  });

  it('are at least fifteen', () => {
    expect(PUBLISHED.length).toBeGreaterThanOrEqual(15);
  });

  // Brown & Heathers 2017, Soc. Psychol. Pers. Sci. 8:363: means that whole numbers cannot have.
  it.each([
    ['3.48', '20'],
    ['5.19', '28'],
  ])('the known impossible mean %s of %s is found', (mean, n) => {
    const found = check([
      { id: 'n', set: 's', quantity: 'n', printed: n },
      { id: 'm', set: 's', quantity: 'mean', step: '1', printed: mean },
    ]);
    expect(found.judged.find(({ figure }) => figure.id === 'm')?.verdict).toBe('cannot be');
  });
});
