import { premium } from "@cornerway/engine";
import type { Digest, Mark, Premium, ProjectCostBook, Scheme } from "@cornerway/schema";

const most = 60;

/** Premiums last worked out, by all that determines them, so that a price looked at by many is worked out once. */
const known = new Map<string, Premium>();

/** The premium of a scheme by its content digest, with the marks of an assessment by its result digest. */
export function premiumOf(
  { scheme, contentDigest }: { scheme: Scheme; contentDigest: Digest },
  { book, digest }: ProjectCostBook,
  assessed: { marks: readonly Mark[]; resultDigest: Digest } | null,
): Premium {
  const key = `${contentDigest} ${digest} ${assessed?.resultDigest ?? ""}`;
  const found = known.get(key) ?? premium(scheme, book, assessed?.marks);
  known.delete(key);
  known.set(key, found);
  for (const oldest of known.keys()) {
    if (known.size <= most) break;
    known.delete(oldest);
  }
  return found;
}
