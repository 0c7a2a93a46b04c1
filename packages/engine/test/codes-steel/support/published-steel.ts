import { readFileSync } from "node:fs";

export type PublishedCase = {
  readonly id: string;
  readonly case: string;
  readonly source: string;
  readonly certainty: "published" | "derived" | "memory" | "common practice";
  readonly reference: number;
  readonly unit: string;
  /** Relative difference the rounding of the reference allows. */
  readonly tolerance: number;
  /** Why ours is outside of that, where it is and stays so. */
  readonly departs?: string;
};

const file = new URL("../../../../../shared/published/steel.json", import.meta.url);
export const publishedSteel: readonly PublishedCase[] = JSON.parse(readFileSync(file, "utf8"));
