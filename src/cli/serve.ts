import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';

/** What a study hands to the workbench: `files` in the order of `/study/files/<index>`. */
export interface ServedStudy {
  readonly study: string;
  readonly text: string;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

export interface Serving {
  readonly url: string;
  readonly close: () => Promise<void>;
}

const JSON_TYPE = 'application/json; charset=utf-8';
const BYTES = 'application/octet-stream';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': JSON_TYPE,
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.csv': 'text/csv; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
};

/** The page may run its own scripts and worker and speak to nobody else. */
const CONTENT_POLICY =
  "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self' 'unsafe-inline'; " +
  "img-src 'self' data: blob:; worker-src 'self' blob:; connect-src 'self'; frame-ancestors 'none'; " +
  "base-uri 'none'; form-action 'none'";

const HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': CONTENT_POLICY,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-embedder-policy': 'require-corp',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-store',
};

/**
 * Serves the built workbench, and a study with its files, on the loopback address alone. A page of
 * another site can neither read it (Origin) nor reach it under a name of its own (Host).
 *
 * @param port 0 takes any free one.
 */
export async function serve(folder: string, study: ServedStudy | null, port: number): Promise<Serving> {
  const server = createServer((request, response) => {
    answer(request, folder, study)
      .catch(() => plain(500, 'the request failed'))
      .then((reply) => send(response, reply));
  });
  await listen(server, port);
  const { port: taken } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${taken}/`,
    close: () => new Promise((done) => server.close(() => done()).closeAllConnections()),
  };
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((done, fail) => {
    server.once('error', fail);
    server.listen(port, '127.0.0.1', () => done());
  });
}

interface Reply {
  readonly status: number;
  readonly type: string;
  readonly body: string | Uint8Array;
}

function plain(status: number, body: string): Reply {
  return { status, type: 'text/plain; charset=utf-8', body };
}

function send(response: ServerResponse, { status, type, body }: Reply): void {
  response.writeHead(status, { ...HEADERS, 'content-type': type });
  response.end(response.req.method === 'HEAD' ? undefined : body);
}

async function answer(request: IncomingMessage, folder: string, study: ServedStudy | null): Promise<Reply> {
  const { port } = request.socket.address() as AddressInfo;
  if (!isOurs(request, port)) return plain(403, 'only this machine may ask');
  if (request.method !== 'GET' && request.method !== 'HEAD') return plain(405, 'only GET is answered');
  const path = pathOf(request.url ?? '/');
  if (path === null) return plain(400, 'the address is not understood');
  if (path.startsWith('/study/')) return answerStudy(path, study);
  const file = path === '/' ? 'index.html' : path.slice(1);
  try {
    const body = await readFile(join(folder, file));
    return { status: 200, type: TYPES[extname(file).toLowerCase()] ?? BYTES, body };
  } catch {
    return plain(404, 'there is no such page');
  }
}

function isOurs(request: IncomingMessage, port: number): boolean {
  const names = [`127.0.0.1:${port}`, `localhost:${port}`];
  const { host, origin } = request.headers;
  if (host === undefined || !names.includes(host.toLowerCase())) return false;
  return origin === undefined || names.some((name) => origin.toLowerCase() === `http://${name}`);
}

/** The decoded path, null for one that is malformed or climbs out of the folder. */
function pathOf(url: string): string | null {
  try {
    const path = decodeURIComponent(url.split(/[?#]/)[0]);
    const plain = normalize(path);
    const climbs = !path.startsWith('/') || path.includes('\0') || path.includes('\\');
    const hidden = path.split('/').some((part) => part.startsWith('.'));
    return climbs || hidden || plain.split(sep).includes('..') ? null : plain.split(sep).join('/');
  } catch {
    return null;
  }
}

function answerStudy(path: string, study: ServedStudy | null): Reply {
  if (study === null) {
    // The workbench asks this at every start; to have no study is no fault.
    return path === '/study/manifest.json' ? plain(204, '') : plain(404, 'no study was opened');
  }
  if (path === '/study/manifest.json') {
    const manifest = { study: study.study, files: [...study.files.keys()] };
    return { status: 200, type: JSON_TYPE, body: JSON.stringify(manifest) };
  }
  if (path === '/study/study.json') return { status: 200, type: JSON_TYPE, body: study.text };
  const index = /^\/study\/files\/(\d{1,4})$/.exec(path)?.[1];
  const body = index === undefined ? undefined : [...study.files.values()][Number(index)];
  return body === undefined ? plain(404, 'there is no such file') : { status: 200, type: BYTES, body };
}
