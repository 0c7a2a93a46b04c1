import type { Digest, Scheme } from "@cornerway/schema";

const most = 20;

interface Known {
  scheme: Scheme;
  /** As JSON, once it was sent. */
  text?: string;
}

/**
 * The schemes last read or written, by content digest, so that a draft of thousands of elements is not read and parsed
 * again at every act, nor written out at every reading. A digest names one content only, so what is found here is what
 * the database holds.
 */
const known = new Map<Digest, Known>();

export const knownScheme = (digest: Digest): Scheme | undefined => known.get(digest)?.scheme;

/** A known scheme as JSON. */
export function knownSchemeText(digest: Digest): string | undefined {
  const found = known.get(digest);
  return found && (found.text ??= JSON.stringify(found.scheme));
}

export function keepScheme(digest: Digest, scheme: Scheme): Scheme {
  const before = known.get(digest);
  known.delete(digest);
  known.set(digest, before ?? { scheme });
  for (const oldest of known.keys()) {
    if (known.size <= most) break;
    known.delete(oldest);
  }
  return scheme;
}
