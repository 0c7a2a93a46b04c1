import type { SheetNumber } from "../sheet/contract.ts";

/** Sheets that are not drawn yet, and why. */
export const asleepSheets: ReadonlyMap<SheetNumber, string> = new Map([
  [4, "Revisions are not laid over each other yet."],
]);
