import type { Pad } from "@cornerway/schema";

/** The two sides of a pad in plan, m. */
export const rectCornersApart = ({ lengthUm, widthUm }: Pad): { lengthM: number; widthM: number } => ({
  lengthM: lengthUm / 1_000_000,
  widthM: widthUm / 1_000_000,
});
