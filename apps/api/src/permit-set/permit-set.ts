import { digestOf, type Digest } from "@cornerway/schema";
import type { Page } from "./paper/page.ts";

/** Raised with any change that can move ink: the same revision, head, engine and template give the same bytes. */
export const templateVersion = "8";

/** Of each page, and of the set: over its title, time, template and the digests of its pages. */
export function digestsOf(set: PermitSet): { set: Digest; pages: Digest[] } {
  const pages = set.pages.map((page) => digestOf(page));
  return { set: digestOf({ ...set, pages }), pages };
}

/** All that is printed. Its digest is the digest of the set: it stands on every page, and nowhere within this. */
export type PermitSet = {
  templateVersion: string;
  title: string;
  /** Time of the record's head the set is printed up to. */
  at: string;
  pages: Page[];
};
