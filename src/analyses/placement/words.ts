import { verdictAt } from '../../numerics/tests/conformal.ts';
import type { Words } from '../before-answers.ts';
import { printCount, printList, printNumber, printP } from '../phrasing.ts';
import type { JudgedLabel, Novelty, PlacementFound } from './found.ts';

/** What cannot be excluded, at which level, and from how much; never what the find is. */
export function placementWords(found: PlacementFound): Words {
  if (found.unplaced !== null) {
    return {
      sentence: `The find could not be placed: ${found.unplaced}.`,
      cautions: [
        ...found.notes.map(sentenceOf),
        found.lacking.length > 0
          ? `What the comparanda record: ${printList(found.lacking)}. Give at least one of these.`
          : 'The comparanda record nothing that could be compared.',
      ],
    };
  }
  const parts = [nearestWords(found), ...found.novelty.map((novelty) => labelWords(found, novelty))];
  return { sentence: `${parts.join('. ')}.`, cautions: cautionsOf(found) };
}

function nearestWords({ neighbours, comparedOn, n, unit }: PlacementFound): string {
  const near = neighbours.slice(0, 3).map(({ id, assemblage, distance }) => {
    const from = assemblage === '' ? '' : `${assemblage}, `;
    return `${id} (${from}${printNumber(distance, 2)})`;
  });
  const among = printCount(unit === 'item' ? n.items : n.fragments, unit);
  return `Of ${among} the find is nearest to ${printList(near)}, by ${printCount(comparedOn.length, 'attribute')} (distance in brackets)`;
}

function labelWords(found: PlacementFound, novelty: Novelty): string {
  const { level, noneLevel } = found.options;
  const { attribute } = novelty;
  const own = found.judged.filter((one) => one.attribute === attribute);
  const at = `at ${printNumber(level * 100)} %`;
  const tooFew = own.filter((one) => isFew(one, level)).map(({ label }) => label);
  if (tooFew.length === own.length) return `${attribute}: no label has enough records to be judged ${at}`;
  const few =
    tooFew.length > MOST_NAMED
      ? `; too few to judge: ${tooFew.length} others`
      : tooFew.length > 0
        ? `; too few to judge: ${printList(tooFew)}`
        : '';
  const judged = own.length - tooFew.length;
  const inSet = own.filter((one) => isIn(one, level)).sort((a, b) => pOf(b) - pOf(a));
  if (inSet.length > 0) {
    const shown = inSet.slice(0, MOST_NAMED).map((one) => `${one.label} (${printP(pOf(one))})`);
    const more = inSet.length > shown.length ? [`${inSet.length - shown.length} more`] : [];
    const which =
      inSet.length === judged && judged > 1
        ? `none of ${judged} can be excluded`
        : `of ${judged}, ${inSet.length} cannot be excluded`;
    return `${attribute}: ${which} ${at}: ${printList([...shown, ...more])}${few}`;
  }
  const all = `${attribute}: all ${judged} that can be judged are excluded ${at}`;
  const none = `at ${printNumber(noneLevel * 100)} %`;
  if (novelty.verdict === 'excluded') {
    return `${all}, and ${none} the find is unlike any ${attribute.toLowerCase()} known here${few}`;
  }
  const nearest = [...own].sort((a, b) => pOf(b) - pOf(a))[0];
  return `${all}, but that it is none of these cannot be said ${none} (${nearest.label}, ${printP(pOf(nearest))})${few}`;
}

/** Labels that the sentence names; the table has them all. */
const MOST_NAMED = 4;

function isFew({ outcome }: JudgedLabel, level: number): boolean {
  return 'why' in outcome || verdictAt(level, outcome) === 'too few to judge';
}

function isIn({ outcome }: JudgedLabel, level: number): boolean {
  return !('why' in outcome) && verdictAt(level, outcome) === 'cannot be excluded';
}

function pOf({ outcome }: JudgedLabel): number {
  return 'why' in outcome ? 0 : outcome.p;
}

function sentenceOf(note: string): string {
  return note.endsWith('.') ? note : `${note}.`;
}

/** Moves that turn a verdict in at least this share of the changes tried are called fragile. */
const FRAGILE = 0.1;

function cautionsOf(found: PlacementFound): string[] {
  const cautions = found.notes.map(sentenceOf);
  if (found.lacking.length > 0) {
    cautions.push(
      `Not known of the find, and so not compared: ${printList(found.lacking)}. The comparanda were compared with each other on the same attributes as with the find.`,
    );
  }
  const fragile = found.moves.filter(({ turned, tried }) => turned > 0 && turned >= FRAGILE * tried);
  for (const change of ['its own ranges', 'other weights', 'an assemblage left out'] as const) {
    const labels = fragile.filter((move) => move.change === change).map(({ label }) => label);
    if (labels.length === 0) continue;
    const shown = labels.slice(0, 6);
    const rest = labels.length > 6 ? [`${labels.length - 6} more`] : [];
    const how =
      change === 'its own ranges'
        ? 'when its values move within their ranges'
        : change === 'other weights'
          ? 'when a block counts double or nothing'
          : 'when an assemblage is left out';
    cautions.push(`Fragile ${how}: ${printList([...shown, ...rest])}.`);
  }
  const outside = found.percentiles.filter(
    ({ by, bounds }) => by === '' && !('why' in bounds) && bounds.outside !== null,
  );
  for (const { label, bounds } of outside) {
    if ('why' in bounds) continue;
    cautions.push(`${label}: ${bounds.outside} the observed range (n = ${bounds.n}).`);
  }
  const drawn = found.judged.filter(({ size, judgedBy }) => judgedBy < size);
  if (drawn.length > 0) {
    cautions.push(
      `${printCount(drawn.length, 'label')} with more than ${found.options.calibration} records were judged by that many, drawn by the seed.`,
    );
  }
  const compared = new Set(found.comparedOn);
  const circular = found.novelty
    .filter(({ attribute }) => compared.has(attribute))
    .map(({ attribute }) => attribute);
  if (circular.length > 0) {
    cautions.push(`${printList(circular)}: also compared, so its labels are judged by themselves.`);
  }
  if (found.unit === 'fragment' && found.n.items < found.n.fragments) {
    cautions.push(
      `${found.n.fragments} fragments come from ${found.n.items} items: fragments of one item are not independent, and p values are then too sure.`,
    );
  }
  if (found.neighbours.some(({ use }) => use !== '')) {
    cautions.push(
      'Recorded uses of near comparanda are shown with how each was known; likeness of fabric alone does not carry a use over.',
    );
  }
  return cautions;
}
