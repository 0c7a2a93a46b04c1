import type { Side } from "../drawing/contract.ts";
import { PaperButton } from "./PaperButton.tsx";

const sides: readonly Side[] = ["south", "east", "north", "west"];

/** The four sides of the building beside the elevation's title: each turns to it. */
export const SideChoice = ({
  xPx,
  yPx,
  side,
  onSide,
}: {
  xPx: number;
  yPx: number;
  side: Side;
  onSide: (side: Side) => void;
}) => (
  <g role="group" aria-label="Side of the building">
    {sides.map((each, at) => (
      <PaperButton
        key={each}
        xPx={xPx + at * 38}
        yPx={yPx}
        label={each.charAt(0).toUpperCase()}
        spoken={`${each} elevation`}
        pressed={each === side}
        onPress={() => onSide(each)}
      />
    ))}
  </g>
);
