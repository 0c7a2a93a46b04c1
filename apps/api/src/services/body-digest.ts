import { digestOf, type Digest } from "@cornerway/schema";
import type { Part } from "./part.ts";

/** Tells an act sent twice, which gets its first answer again, from another act under the same id. */
export const bodyDigestOf = (part: Part, body: unknown): Digest => digestOf({ person: part.person.id, body });
