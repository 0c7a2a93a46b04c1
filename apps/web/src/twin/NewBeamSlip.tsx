import type { PointMm } from "@cornerway/schema";
import { Slip } from "../sheet/Slip.tsx";
import { drawnLength, drawnLevel } from "../units/drawn-length.ts";
import { useUnits } from "../units/use-units.ts";

/** A beam in hand: what the next press does. */
export function NewBeamSlip({ from }: { from: PointMm | null }) {
  const units = useUnits();
  return (
    <Slip label="A beam, in hand">
      <p>
        {from === null
          ? "Press where it begins: on a post's head, under a corner, or anywhere on plan or elevation."
          : `It begins ${drawnLength(from.xMm, units)} east, ${drawnLength(from.yMm, units)} north, at ${drawnLevel(from.zMm, units)}. Press where it ends.`}
      </p>
      <p className="lettered">Esc lets it go.</p>
    </Slip>
  );
}
