/**
 * A short key of a long text: its length and four sums of 32 bits (FNV-1a from four starts, the published offset basis and
 * prime, from memory). Texts that differ share a key once in 10³⁰; nobody chooses them to.
 */
export function textKey(text: string): string {
  const sums = Int32Array.of(OFFSET_BASIS, OFFSET_BASIS + 1, OFFSET_BASIS + 2, OFFSET_BASIS + 3);
  for (let n = 0; n < text.length; n++) {
    const unit = text.charCodeAt(n);
    for (let s = 0; s < sums.length; s++) sums[s] = Math.imul((sums[s] ?? 0) ^ unit, PRIME + 2 * s);
  }
  return `${text.length}:${sums.join(":")}`;
}

const OFFSET_BASIS = 0x811c9dc5;
const PRIME = 0x01000193;
