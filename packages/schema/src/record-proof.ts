import { z } from "zod";
import { Digest } from "./ids.ts";
import { RecordKey, SignedHead } from "./record-bundle.ts";
import { Moment } from "./review.ts";

/** A key that signs or signed heads; `until` is when the next one took its place, null for the one that signs now. */
export const ListedKey = RecordKey.extend({ until: Moment.nullable() }).meta({ id: "ListedKey" });
export type ListedKey = z.infer<typeof ListedKey>;

/** Shows an entry to be under a signed head: RFC 9162 section 2.1.3. */
export const InclusionProof = z
  .strictObject({ number: z.int().min(1), leaf: Digest, proof: z.array(Digest), head: SignedHead })
  .meta({ id: "InclusionProof" });
export type InclusionProof = z.infer<typeof InclusionProof>;

/** Shows a signed head to continue the record as it stood at `from`: RFC 9162 section 2.1.4. */
export const ConsistencyProof = z
  .strictObject({ from: z.int().min(1), proof: z.array(Digest), head: SignedHead })
  .meta({ id: "ConsistencyProof" });
export type ConsistencyProof = z.infer<typeof ConsistencyProof>;
