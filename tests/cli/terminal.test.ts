import { describe, expect, it } from 'vitest';
import { describeFailure } from '../../src/cli/failure.ts';
import { withoutSteering } from '../../src/cli/terminal.ts';
import { tame } from '../../src/cli/text-table.ts';
import { printJson } from '../../src/cli/verbs/verb.ts';
import { InputError } from '../../src/errors.ts';

// ECMA-48 control functions: CSI (ESC [), OSC (ESC ]), and their one-byte forms of the set C1.
const STEERING = ['\u001b[2J', '\u001b]0;title\u0007', '\u009b2J', '\u001b[8m', '\r', '\u0008', '\u202e'];

describe('what the data may do to a terminal', () => {
  it('is nothing: only line ends, tabs and our own colours pass', () => {
    for (const code of STEERING)
      expect(withoutSteering(`a${code}b`), JSON.stringify(code)).not.toContain(code);
    expect(withoutSteering('\u001b[31mred\u001b[39m\n\tplain')).toBe('\u001b[31mred\u001b[39m\n\tplain');
    expect(withoutSteering('\n[8m')).toBe('\n[8m');
  });

  it('is nothing in a table, in a fault and in JSON', () => {
    for (const code of STEERING) {
      expect(tame(`a${code}b`)).not.toContain(code);
      const { text } = describeFailure(new InputError(`a${code}b`, { file: `f${code}` }, 'mend'), false);
      expect(text).not.toContain(code);
      let json = '';
      const terminal = { out: (part: string) => (json += part) } as unknown as Parameters<
        typeof printJson
      >[0];
      printJson(terminal, { cell: `a${code}b` });
      expect(json).not.toContain(code);
      expect(JSON.parse(json)).toEqual({ cell: `a${code}b` });
    }
  });
});
