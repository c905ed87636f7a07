import { GLOSSARY } from '../../src/analyses/glossary.ts';
import { structureFile } from './structures-page.ts';

const HEAD = `# Glossary

The words that Thrum uses on screens (behind *Words*, above every page), in the terminal (\`thrum explain WORD\`) and in
reports. Terms of the trade follow Emery 1966, Seiler-Baldinger 1994 and Adovasio 1977 where they agree (from memory; see
\`docs/attributes.md\` for the source of each term); statistical terms are those of handbooks. Written by \`npm run glossary\`
from \`src/analyses/glossary.ts\`.
`;

/** docs/glossary.md as it follows from the code. */
export function glossaryPage(): string {
  const sections = GLOSSARY.map(({ title, words }) =>
    [
      `## ${title}`,
      '',
      '| word | meaning |',
      '|---|---|',
      ...words.map(
        ({ word, meaning, more, drawn }) =>
          `| ${word} | ${meaning}${more === undefined ? '' : ` ([${more[0]}](${more[1]}))`}${drawn === undefined ? '' : `<br>![a schema of ${word}](images/structures/${structureFile(drawn.structure, drawn.facets)})`} |`,
      ),
      '',
    ].join('\n'),
  );
  return [HEAD, ...sections].join('\n');
}
