import { elementNames, markSentences } from "@cornerway/schema";
import type { Mark, MarkSentences, Reader, Role, Scheme, UnitSystem } from "@cornerway/schema";

/** What a mark says to someone in this role, in the units they read. */
export const markWords = (mark: Mark, scheme: Scheme, role: Role, units: UnitSystem): MarkSentences =>
  markSentences(mark, elementNames(scheme), readerOf[role], units);

const readerOf: Record<Role, Reader> = {
  architect: "architect",
  engineer: "engineer",
  checker: "engineer",
  owner: "owner",
  reader: "architect",
};
