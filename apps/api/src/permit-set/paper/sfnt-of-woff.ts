import { inflateSync } from "node:zlib";

const headBytes = 44;
const entryBytes = 20;

/**
 * A font of WOFF 1.0 (W3C, 2012) as the plain font within it. Read as it is, its tables would be unpacked anew at every
 * glyph.
 */
export function sfntOfWoff(woff: Buffer): Buffer {
  if (woff.toString("latin1", 0, 4) !== "wOFF") throw new Error("not a WOFF file");
  const count = woff.readUInt16BE(12);
  const entries = Array.from({ length: count }, (_, at) => entryAt(woff, headBytes + at * entryBytes));
  const head = Buffer.alloc(12 + 16 * count);
  woff.copy(head, 0, 4, 8);
  head.writeUInt16BE(count, 4);
  const power = 2 ** Math.floor(Math.log2(count));
  head.writeUInt16BE(power * 16, 6);
  head.writeUInt16BE(Math.log2(power), 8);
  head.writeUInt16BE((count - power) * 16, 10);
  const parts = [head];
  let offset = head.length;
  for (const [at, { tag, checksum, table }] of entries.entries()) {
    const row = 12 + 16 * at;
    head.write(tag, row, "latin1");
    head.writeUInt32BE(checksum, row + 4);
    head.writeUInt32BE(offset, row + 8);
    head.writeUInt32BE(table.length, row + 12);
    const padded = Buffer.alloc(Math.ceil(table.length / 4) * 4);
    table.copy(padded);
    parts.push(padded);
    offset += padded.length;
  }
  return Buffer.concat(parts);
}

function entryAt(woff: Buffer, at: number): { tag: string; checksum: number; table: Buffer } {
  const [offset, packed, whole] = [woff.readUInt32BE(at + 4), woff.readUInt32BE(at + 8), woff.readUInt32BE(at + 12)];
  const bytes = woff.subarray(offset, offset + packed);
  return {
    tag: woff.toString("latin1", at, at + 4),
    checksum: woff.readUInt32BE(at + 16),
    table: packed < whole ? inflateSync(bytes) : bytes,
  };
}
