import type { Certainty } from "@cornerway/schema";

/** How far a value can be trusted, as it is printed. */
export const certaintyWords: Readonly<Record<Certainty, string>> = {
  published: "published",
  derived: "derived",
  memory: "from memory, confirm against the text",
  "common practice": "common practice, no published source",
};

/** The same in a table, where the words above stand once for all. */
export const certaintyInTable: Readonly<Record<Certainty, string>> = {
  ...certaintyWords,
  memory: "from memory",
  "common practice": "common practice",
};
