import type { Verdict } from "@cornerway/schema";

/** `small` for areas under 20 px, `wide` for large areas. */
export type HatchSize = "small" | "normal" | "wide";
/** Screening is pencil; what an engineer has answered is ink. */
export type HatchHand = "pencil" | "ink";

/** Fill of a verdict's hatch; works as built and not checked are bare on a drawing, hatched only in the key. */
export const hatchFill = (verdict: Verdict, size: HatchSize = "normal", hand: HatchHand = "ink"): string =>
  verdict === "not checked" ? "none" : `url(#${hatchId(verdict, size, hand)})`;

export const hatchId = (verdict: Verdict, size: HatchSize, hand: HatchHand): string =>
  `hatch-${verdict.replaceAll(" ", "-")}-${size}-${hand}`;

/** Pencil shade on faces away from the sun (`close`), and on the ground (`open`). */
export const pencilFill = {
  close: "url(#pencil-close)",
  open: "url(#pencil-open)",
} as const;
