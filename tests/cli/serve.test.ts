import { mkdtempSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Serving, serve } from '../../src/cli/serve.ts';

const folder = mkdtempSync(join(tmpdir(), 'thrum-serve-'));
writeFileSync(join(folder, 'index.html'), '<!doctype html><title>workbench</title>');
writeFileSync(join(folder, '..', 'thrum-secret.txt'), 'secret');
let serving: Serving;

beforeAll(async () => {
  const files = new Map([['finds.csv', new TextEncoder().encode('a;b\n')]]);
  serving = await serve(folder, { study: 'study.json', text: '{"title":"t"}', files }, 0);
});
afterAll(() => serving.close());

/** A plain HTTP request, since fetch would tidy the path and the Host header. */
function get(path: string, headers: Record<string, string> = {}, method = 'GET', from = serving) {
  const { hostname, port } = new URL(from.url);
  return new Promise<{ status: number; body: string; headers: Record<string, unknown> }>((done, fail) => {
    const asked = request({ hostname, port, path, headers, method }, (response) => {
      let body = '';
      response.setEncoding('utf8');
      response.on('data', (part: string) => {
        body += part;
      });
      response.on('end', () => done({ status: response.statusCode ?? 0, body, headers: response.headers }));
    });
    asked.on('error', fail);
    asked.end();
  });
}

describe('the workbench is served', () => {
  it('on the loopback address, with a policy that lets it speak to nobody else', async () => {
    expect(serving.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    const { status, body, headers } = await get('/');
    expect(status).toBe(200);
    expect(body).toContain('workbench');
    expect(headers['content-type']).toBe('text/html; charset=utf-8');
    expect(headers['content-security-policy']).toContain("connect-src 'self'");
    expect(headers['x-content-type-options']).toBe('nosniff');
  });

  it('with the study and its files', async () => {
    const manifest = await get('/study/manifest.json');
    expect(JSON.parse(manifest.body)).toEqual({ study: 'study.json', files: ['finds.csv'] });
    expect((await get('/study/study.json')).body).toBe('{"title":"t"}');
    expect((await get('/study/files/0')).body).toBe('a;b\n');
    expect((await get('/study/files/1')).status).toBe(404);
  });

  it('without a study it says that there is none, which is no fault', async () => {
    const bare = await serve(folder, null, 0);
    const { status, body } = await get('/study/manifest.json', {}, 'GET', bare);
    expect([status, body]).toEqual([204, '']);
    expect((await get('/study/study.json', {}, 'GET', bare)).status).toBe(404);
    await bare.close();
  });
});

describe('nobody else is served', () => {
  it('a foreign Host or Origin is refused', async () => {
    expect((await get('/', { host: 'evil.example' })).status).toBe(403);
    expect((await get('/', { origin: 'https://evil.example' })).status).toBe(403);
    expect((await get('/', { origin: 'null' })).status).toBe(403);
    const own = serving.url.replace(/\/$/, '');
    expect((await get('/', { origin: own })).status).toBe(200);
  });

  it.each([
    '/../thrum-secret.txt',
    '/..%2fthrum-secret.txt',
    '/%2e%2e/thrum-secret.txt',
    '/a/../../thrum-secret.txt',
    '/..%5cthrum-secret.txt',
    '/%00',
    '/.git/config',
    '/%E0%A4%A',
    'thrum-secret.txt',
  ])('no path climbs out of the folder: %s', async (path) => {
    const { status, body } = await get(path);
    expect([400, 404]).toContain(status);
    expect(body).not.toContain('secret');
  });

  it('only reading is answered', async () => {
    expect((await get('/', {}, 'POST')).status).toBe(405);
    const head = await get('/', {}, 'HEAD');
    expect([head.status, head.body]).toEqual([200, '']);
  });
});
