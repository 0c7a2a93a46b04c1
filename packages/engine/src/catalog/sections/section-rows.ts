import type { Certainty } from "@cornerway/schema";
import { containerMembers } from "./container-members.ts";
import { doorPost } from "./door-post.ts";
import { namedSections } from "./find-section.ts";
import { folds } from "./corrugated-sheet.ts";
import { steels } from "../materials.ts";

/** One number the checks judge by, as plain data fit to be digested with the rest of the catalogue. */
export type SectionRow = {
  readonly key: string;
  readonly property: string;
  readonly value: number;
  readonly source: string;
  readonly certainty: Certainty;
};

type Described = { readonly source: string; readonly certainty: Certainty };

/** Every number of a row; its property names carry the units (`areaMm2`, `fyMpa`). */
const numbersOf = (key: string, row: Described): SectionRow[] =>
  Object.entries(row).flatMap(([property, value]: [string, unknown]) =>
    typeof value === "number" ? [{ key, property, value, source: row.source, certainty: row.certainty }] : [],
  );

const foldOrigin: Described = {
  source: "generic purchase specifications of dry containers",
  certainty: "common practice",
};

/** Sections, container members, folds and steels, row by row, in the order of their tables. */
export const sectionRows: readonly SectionRow[] = [
  ...namedSections.flatMap((section) => numbersOf(section.name, section)),
  ...Object.entries(containerMembers).flatMap(([member, section]) => numbersOf(member, section)),
  ...numbersOf("door corner post", doorPost),
  ...Object.entries(folds).flatMap(([panel, fold]) => numbersOf(`${panel} sheet`, { ...foldOrigin, ...fold })),
  ...Object.values(steels).flatMap((steel) => numbersOf(steel.name, steel)),
];
