import ts from 'typescript';

/** One place of a source file and the wrong text that is put there. */
export interface Site {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly wrong: string;
  /** What was done, for the list of those that no test noticed. */
  readonly what: string;
}

const OPERATORS: Readonly<Partial<Record<ts.SyntaxKind, string>>> = {
  [ts.SyntaxKind.LessThanToken]: '>=',
  [ts.SyntaxKind.LessThanEqualsToken]: '<',
  [ts.SyntaxKind.GreaterThanToken]: '<=',
  [ts.SyntaxKind.GreaterThanEqualsToken]: '>',
  [ts.SyntaxKind.EqualsEqualsEqualsToken]: '!==',
  [ts.SyntaxKind.ExclamationEqualsEqualsToken]: '===',
  [ts.SyntaxKind.AmpersandAmpersandToken]: '||',
  [ts.SyntaxKind.BarBarToken]: '&&',
  [ts.SyntaxKind.MinusToken]: '+',
  [ts.SyntaxKind.AsteriskToken]: '/',
  [ts.SyntaxKind.SlashToken]: '*',
};

/** Words of a caption, a label or a sentence; shorter ones are keys and names. */
const SHORTEST_SENTENCE = 12;
/** Rules of a style sheet: how a page looks is held by its pictures, not by its text. */
const STYLE_SHEET = /[{}][^{}]*:[^{}]*;/;

/**
 * Every place of a file where one change makes the code wrong and still leaves it code: a comparison turned round,
 * "and" for "or", minus for plus, true for false, a number moved by one, a condition always met, a sentence or the words between two of its values taken out.
 */
export function sitesOf(file: string, text: string): Site[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const sites: Site[] = [];
  const add = (node: ts.Node, wrong: string) => {
    const start = node.getStart(source);
    sites.push({
      file,
      start,
      end: node.end,
      wrong,
      what: `${short(text.slice(start, node.end))} -> ${short(wrong)}`,
    });
  };
  const visit = (node: ts.Node): void => {
    if (isTypeOrImport(node)) return;
    if (ts.isBinaryExpression(node)) {
      const wrong = OPERATORS[node.operatorToken.kind];
      if (wrong !== undefined) add(node.operatorToken, wrong);
    } else if (node.kind === ts.SyntaxKind.TrueKeyword) add(node, 'false');
    else if (node.kind === ts.SyntaxKind.FalseKeyword) add(node, 'true');
    else if (ts.isNumericLiteral(node)) add(node, `(${node.text} + 1)`);
    else if (ts.isConditionalExpression(node)) add(node.condition, 'true');
    else if (ts.isIfStatement(node)) add(node.expression, 'false');
    else if (isSentence(node)) add(node, "''");
    else if (ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node)) {
      if (isSaid(node.text))
        add(
          node,
          `${text[node.getStart(source)]}${text.slice(node.end - (ts.isTemplateTail(node) ? 1 : 2), node.end)}`,
        );
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return sites;
}

function isTypeOrImport(node: ts.Node): boolean {
  return (
    ts.isTypeNode(node) ||
    ts.isImportDeclaration(node) ||
    ts.isExportDeclaration(node) ||
    ts.isInterfaceDeclaration(node) ||
    ts.isTypeAliasDeclaration(node)
  );
}

/** A text with a space in it that is said to somebody: neither a key nor the message of a fault of ours. */
function isSentence(node: ts.Node): boolean {
  if (!ts.isStringLiteral(node) && !ts.isNoSubstitutionTemplateLiteral(node)) return false;
  if (ts.isPropertyAssignment(node.parent) && node.parent.name === node) return false;
  if (ts.isNewExpression(node.parent) && node.parent.expression.getText() === 'Error') return false;
  return isSaid(node.text);
}

function isSaid(text: string): boolean {
  return text.length >= SHORTEST_SENTENCE && text.includes(' ') && !STYLE_SHEET.test(text);
}

function short(text: string): string {
  const line = text.replace(/\s+/g, ' ');
  return line.length > 60 ? `${line.slice(0, 57)}...` : line;
}
