import type { Side } from "../drawing/contract.ts";
import { sides } from "../drawing/sides.ts";
import { PaperButton } from "./PaperButton.tsx";

/** The four sides of the building beside the elevation's title: each turns to it. */
export const SideChoice = ({
  xPx,
  yPx,
  side,
  onSide,
  onPlan,
}: {
  xPx: number;
  yPx: number;
  /** Null while the plan stands in the place of the elevation. */
  side: Side | null;
  onSide: (side: Side) => void;
  /** On a field too narrow for both views: shows the plan instead. */
  onPlan?: (() => void) | undefined;
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
    {onPlan === undefined ? null : (
      <PaperButton xPx={xPx + 4 * 38} yPx={yPx} label="Plan" pressed={side === null} onPress={onPlan} />
    )}
  </g>
);
