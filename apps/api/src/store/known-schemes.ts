import type { Digest, Scheme } from "@cornerway/schema";

const most = 20;

/**
 * The schemes last read or written, by content digest, so that a draft of thousands of elements is not read and parsed
 * again at every act. A digest names one content only, so what is found here is what the database holds.
 */
const known = new Map<Digest, Scheme>();

export const knownScheme = (digest: Digest): Scheme | undefined => known.get(digest);

export function keepScheme(digest: Digest, scheme: Scheme): Scheme {
  known.delete(digest);
  known.set(digest, scheme);
  for (const oldest of known.keys()) {
    if (known.size <= most) break;
    known.delete(oldest);
  }
  return scheme;
}
