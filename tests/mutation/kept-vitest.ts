import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import type { Asked, Heard } from './one-vitest.ts';

const SCRIPT = fileURLToPath(new URL('./one-vitest.ts', import.meta.url));
/** A break can make a loop that never ends; no run of near tests takes as long as this. */
const ENDLESS_MS = 400_000;

/** The kept vitest of a copy, started anew after code that never ended. */
export function keptVitest(root: string): {
  readonly ask: (asked: Asked) => Promise<Heard>;
  readonly end: () => void;
} {
  let kept: ChildProcess | null = null;
  const end = () => {
    if (kept?.pid !== undefined) process.kill(-kept.pid, 'SIGKILL');
    kept = null;
  };
  const ready = async (): Promise<ChildProcess> => {
    if (kept !== null) return kept;
    const started = fork(SCRIPT, [root], {
      cwd: root,
      detached: true,
      stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
      env: { ...process.env, CI: '1' },
    });
    kept = started;
    await once(started, 'message');
    return started;
  };
  return {
    ask: async (asked) => {
      const child = await ready();
      const heard = once(child, 'message').then(([message]) => message as Heard);
      const ended = once(child, 'exit').then(() => null);
      child.send(asked);
      let timer: NodeJS.Timeout | undefined;
      const endless = new Promise<null>((resolve) => {
        timer = setTimeout(() => resolve(null), ENDLESS_MS);
      });
      const answer = await Promise.race([heard, ended, endless]);
      clearTimeout(timer);
      if (answer !== null) return answer;
      end();
      return { failed: 'it never ends', took: {} };
    },
    end,
  };
}
