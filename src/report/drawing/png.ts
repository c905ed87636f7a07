import { zlibSync } from 'fflate';
import type { Colour } from './marks.ts';

/** A grid of colours as a PNG (W3C, Portable Network Graphics, third edition), eight bits a channel with alpha. */
export function pngOf(dots: readonly (readonly (Colour | null)[])[]): Uint8Array {
  const [height, width] = [dots.length, dots[0]?.length ?? 0];
  const raw = new Uint8Array(height * (1 + width * 4));
  dots.forEach((row, y) => {
    row.forEach((colour, x) => {
      if (colour === null) return;
      const at = y * (1 + width * 4) + 1 + x * 4;
      raw.set([...colour.map(Math.round), 255], at);
    });
  });
  const head = new Uint8Array(13);
  const view = new DataView(head.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  head.set([8, 6, 0, 0, 0], 8);
  return joined([
    Uint8Array.of(137, 80, 78, 71, 13, 10, 26, 10),
    chunk('IHDR', head),
    chunk('IDAT', zlibSync(raw, { level: 9 })),
    chunk('IEND', new Uint8Array()),
  ]);
}

/** One chunk: length, name, content, checksum over name and content. */
export function chunk(name: string, content: Uint8Array): Uint8Array {
  const part = new Uint8Array(content.length + 12);
  const view = new DataView(part.buffer);
  view.setUint32(0, content.length);
  part.set(
    [...name].map((letter) => letter.charCodeAt(0)),
    4,
  );
  part.set(content, 8);
  view.setUint32(content.length + 8, checksum(part.subarray(4, content.length + 8)));
  return part;
}

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value >>> 0;
});

function checksum(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (const byte of bytes) value = TABLE[(value ^ byte) & 255] ^ (value >>> 8);
  return (value ^ 0xffffffff) >>> 0;
}

export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

export function dataAddress(png: Uint8Array): string {
  return `data:image/png;base64,${base64(png)}`;
}

export function base64(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const [a, b, c] = [bytes[at], bytes[at + 1] ?? 0, bytes[at + 2] ?? 0];
    const left = bytes.length - at;
    text += LETTERS[a >> 2] + LETTERS[((a & 3) << 4) | (b >> 4)];
    text += left > 1 ? LETTERS[((b & 15) << 2) | (c >> 6)] : '=';
    text += left > 2 ? LETTERS[c & 63] : '=';
  }
  return text;
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
