import type { Digest, Mark, Premium, ProjectCostBook, Scheme } from "@cornerway/schema";
import { priced } from "../premium/premium-threads.ts";

const most = 60;

/** Premiums last asked for, by all that determines them, so that a price looked at by many is worked out once. */
const known = new Map<string, Promise<Premium>>();

/** The premium of a scheme by its content digest, with the marks of an assessment by its result digest. */
export async function premiumOf(
  { scheme, contentDigest }: { scheme: Scheme; contentDigest: Digest },
  { book, digest }: ProjectCostBook,
  assessed: { marks: readonly Mark[]; resultDigest: Digest } | null,
): Promise<Premium> {
  const key = `${contentDigest} ${digest} ${assessed?.resultDigest ?? ""}`;
  const found = known.get(key) ?? priced({ scheme, book, marks: assessed?.marks ?? null });
  known.delete(key);
  known.set(key, found);
  for (const oldest of known.keys()) {
    if (known.size <= most) break;
    known.delete(oldest);
  }
  try {
    return await found;
  } catch (error) {
    known.delete(key); // asked for again, it is tried again
    throw error;
  }
}
