import { elementNames, markSentences } from "@cornerway/schema";
import type { Mark, MarkSentences, Reader, Role, Scheme, UnitSystem } from "@cornerway/schema";

/** What a mark says to someone in this role, in the units they read. */
export const markWords = (mark: Mark, scheme: Scheme, role: Role, units: UnitSystem): MarkSentences =>
  markSentences(mark, namesOf(scheme), readerOf[role], units);

/** A scheme has many marks, and is never changed: its names are gathered once. */
const namesBefore = new WeakMap<Scheme, ReadonlyMap<string, string>>();

function namesOf(scheme: Scheme): ReadonlyMap<string, string> {
  const names = namesBefore.get(scheme) ?? elementNames(scheme);
  namesBefore.set(scheme, names);
  return names;
}

const readerOf: Record<Role, Reader> = {
  architect: "architect",
  engineer: "engineer",
  checker: "engineer",
  owner: "owner",
  reader: "architect",
};
