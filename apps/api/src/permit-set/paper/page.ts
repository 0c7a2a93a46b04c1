import type { Block } from "./ink.ts";

/** One sheet or page of the set as it is printed, pt from its top left. */
export type Page = {
  /** The sheet number as the index and the answers to comments name it: S2.1, C14. */
  number: string;
  title: string;
  /** The bookmark it stands under. */
  chapter: string;
  width: number;
  height: number;
  /** Drawings are framed, calculations ruled. */
  form: "drawing" | "calculation";
  blocks: Block[];
};

/** Page sizes, pt: 17 × 11 in and letter for US units, ISO A3 and A4 for SI. */
export const paperSizes = {
  US: { drawing: { width: 1224, height: 792 }, calculation: { width: 612, height: 792 } },
  SI: { drawing: { width: 1190.55, height: 841.89 }, calculation: { width: 595.28, height: 841.89 } },
} as const;
