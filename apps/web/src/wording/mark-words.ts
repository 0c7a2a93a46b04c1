import { elementNames, markSentences } from "@cornerway/schema";
import type { Mark, MarkSentences, Reader, Role, Scheme } from "@cornerway/schema";

/** What a mark says to someone in this role. */
export const markWords = (mark: Mark, scheme: Scheme, role: Role = "architect"): MarkSentences =>
  markSentences(mark, elementNames(scheme), readerOf[role]);

const readerOf: Record<Role, Reader> = {
  architect: "architect",
  engineer: "engineer",
  checker: "engineer",
  owner: "owner",
  reader: "architect",
};
