/** Where a JSON text stops being JSON. Lines and columns count from 1, columns in UTF-16 code units. */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
  /** What is wrong there, fit to stand in a sentence. */
  readonly what: string;
  readonly mend: string;
}

/**
 * The first fault of a text that is not JSON (RFC 8259), null where it is. Engines word their own
 * messages differently and often without a place; this one says the same everywhere.
 */
export function findJsonFault(text: string): JsonFault | null {
  try {
    const scanner: Scanner = { text, at: 0, depth: 0 };
    skipSpace(scanner);
    readValue(scanner);
    skipSpace(scanner);
    if (scanner.at < text.length) fail(scanner, 'there is text after the end of the JSON value', 'remove it');
    return null;
  } catch (fault) {
    if (fault instanceof Stop) return { ...placeOf(text, fault.at), what: fault.message, mend: fault.mend };
    throw fault;
  }
}

interface Scanner {
  readonly text: string;
  at: number;
  depth: number;
}

class Stop extends Error {
  constructor(
    readonly at: number,
    what: string,
    readonly mend: string,
  ) {
    super(what);
  }
}

const DEEPEST = 500;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;

function fail(scanner: Scanner, what: string, mend: string, at = scanner.at): never {
  throw new Stop(at, what, mend);
}

function placeOf(text: string, at: number): { line: number; column: number } {
  const before = text.slice(0, at);
  const line = before.split('\n').length;
  return { line, column: at - before.lastIndexOf('\n') };
}

function skipSpace(scanner: Scanner): void {
  while (/[ \t\n\r]/.test(scanner.text[scanner.at] ?? '')) scanner.at++;
}

function take(scanner: Scanner, pattern: RegExp): boolean {
  pattern.lastIndex = scanner.at;
  const match = pattern.exec(scanner.text);
  if (match === null) return false;
  scanner.at += match[0].length;
  return true;
}

function readValue(scanner: Scanner): void {
  const next = scanner.text[scanner.at];
  if (next === undefined) fail(scanner, 'the text ends too early', 'close every bracket and quotation mark');
  if (next === '{') readList(scanner, '}', readMember);
  else if (next === '[') readList(scanner, ']', readValue);
  else if (next === '"') readString(scanner);
  else if (!take(scanner, NUMBER) && !take(scanner, WORD)) failAtValue(scanner, next);
}

function failAtValue(scanner: Scanner, next: string): never {
  if (next === '/') fail(scanner, 'a comment stands here, which JSON does not know', 'remove it');
  if (next === "'") fail(scanner, "a text starts with '", 'use double quotation marks');
  if (next === '}' || next === ']' || next === ',') {
    fail(scanner, `a value is missing before "${next}"`, 'write the value, or remove the comma before it');
  }
  const word = /^[^\s,:{}[\]"]{1,20}/.exec(scanner.text.slice(scanner.at, scanner.at + 20))?.[0] ?? next;
  fail(scanner, `"${word}" is not a JSON value`, 'put a text between double quotation marks');
}

function readList(scanner: Scanner, close: ']' | '}', readPart: (scanner: Scanner) => void): void {
  if (++scanner.depth > DEEPEST) fail(scanner, `brackets nest deeper than ${DEEPEST}`, 'nest less deeply');
  scanner.at++;
  skipSpace(scanner);
  if (scanner.text[scanner.at] === close) {
    scanner.at++;
    scanner.depth--;
    return;
  }
  for (;;) {
    readPart(scanner);
    skipSpace(scanner);
    const next = scanner.text[scanner.at];
    if (next !== ',' && next !== close) {
      if (next === undefined)
        fail(scanner, `the text ends before a closing "${close}"`, `add the "${close}"`);
      fail(scanner, `a comma or "${close}" is missing before "${next}"`, `write "," or "${close}" there`);
    }
    scanner.at++;
    if (next === close) {
      scanner.depth--;
      return;
    }
    skipSpace(scanner);
    if (scanner.text[scanner.at] === close) {
      fail(scanner, `a comma stands before the closing "${close}"`, 'remove the comma');
    }
  }
}

function readMember(scanner: Scanner): void {
  if (scanner.text[scanner.at] === '/')
    fail(scanner, 'a comment stands here, which JSON does not know', 'remove it');
  if (scanner.text[scanner.at] !== '"')
    fail(scanner, 'a name is missing', 'write it between double quotation marks');
  readString(scanner);
  skipSpace(scanner);
  if (scanner.text[scanner.at] !== ':') fail(scanner, 'a colon is missing after the name', 'write ":" there');
  scanner.at++;
  skipSpace(scanner);
  readValue(scanner);
}

const ESCAPE = /["\\/bfnrt]|u[0-9a-fA-F]{4}/y;

function readString(scanner: Scanner): void {
  const start = scanner.at++;
  for (;;) {
    const next = scanner.text[scanner.at];
    if (next === undefined || next === '\n') {
      fail(scanner, 'a text is not closed', 'add the closing double quotation mark', start);
    }
    if (next < ' ')
      fail(scanner, 'a control character stands inside a text', 'write it as \\t, \\n or \\u0000');
    scanner.at++;
    if (next === '"') return;
    if (next === '\\' && !take(scanner, ESCAPE)) {
      fail(scanner, 'a backslash starts no known escape', 'double the backslash', scanner.at - 1);
    }
  }
}
