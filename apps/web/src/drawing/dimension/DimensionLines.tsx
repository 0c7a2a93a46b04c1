import { DimensionString } from "./DimensionString.tsx";
import type { DimensionLine } from "./strings.ts";

/** The lines of strings of dimensions; their figures are placed with the other lettering. */
export const DimensionLines = ({ lines }: { lines: readonly DimensionLine[] }) =>
  lines.map(({ key, upright, placesPx, atPx }) => (
    <DimensionString key={key} upright={upright} placesPx={placesPx} atPx={atPx} />
  ));
