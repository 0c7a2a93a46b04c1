import type { Verdict } from "../verdict.ts";

/** The verdict as it stands over a note. */
export const verdictHeadings: Readonly<Record<Verdict, string>> = {
  "works as built": "Works as built",
  "works with steel": "Works with steel",
  "not checked": "Not checked",
  "needs the engineer": "Needs the engineer",
  "does not work": "Does not work",
};
