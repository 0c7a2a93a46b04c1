import type { SheetNumber } from "../sheet/contract.ts";

/** Sheets that are not drawn yet, and why. */
export const asleepSheets: ReadonlyMap<SheetNumber, string> = new Map([
  [2, "No strength is checked yet, so there is no chart of openings."],
  [4, "Revisions are not laid over each other yet."],
]);
