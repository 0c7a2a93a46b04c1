import type { Page } from "./paper/page.ts";

/**
 * A number that stands in the set: of what, which of its sizes or forces, and where. Drawn ones come from the projection
 * that was inked, scheduled ones from the scheme, calculated ones from the recorded assessment. mm and kN.
 */
export type Figure = {
  about: string;
  quantity: string;
  value: number;
  from: "drawing" | "schedule" | "calculation";
  page: string;
};

export type Sheet = { page: Page; figures: readonly Figure[] };
