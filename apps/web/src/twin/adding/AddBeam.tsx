import { Beam, type Operation, type Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import { Command } from "../../controls/Command.tsx";
import { newBeam } from "../../tools/new-beam.ts";
import { beamFields } from "../fields/added-steel-fields.ts";
import { PartForm } from "../part/PartForm.tsx";

interface AddBeamProps {
  scheme: Scheme;
  /** The unit, post or beam it is begun from. */
  elementId: string;
  onDraw: (operations: Operation[]) => void;
  /** Takes a beam in hand, to be drawn by two presses. */
  onByHand: () => void;
}

/** A beam by two points: pressed on the drawing, or typed. */
export default function AddBeam({ scheme, elementId, onDraw, onByHand }: AddBeamProps) {
  const beam = useMemo(() => firstBeam(scheme, elementId), [scheme, elementId]);
  return (
    <>
      <Command onPress={onByHand}>Draw it by two presses</Command>
      {beam === null ? null : (
        <PartForm
          element={beam}
          schema={Beam}
          fields={beamFields}
          command="Set the beam there"
          onElement={(next) => onDraw([{ kind: "beam.set", beam: next }])}
        />
      )}
    </>
  );
}

/** A beam to begin from: across under a unit's middle, or a metre east from a post's head. */
function firstBeam(scheme: Scheme, elementId: string): Beam | null {
  const unit = scheme.containers.find(({ id }) => id === elementId);
  if (unit !== undefined) {
    const [x, y, z] = [unit.xUm / 1000, unit.yUm / 1000, unit.zUm / 1000];
    return newBeam(scheme, { xMm: x, yMm: y - 1500, zMm: z }, { xMm: x, yMm: y + 1500, zMm: z });
  }
  const post = scheme.posts.find(({ id }) => id === elementId);
  const to = scheme.posts.find(({ id, topZUm }) => id !== elementId && topZUm === post?.topZUm);
  if (post === undefined) return null;
  const from = { xMm: post.xUm / 1000, yMm: post.yUm / 1000, zMm: post.topZUm / 1000 };
  return newBeam(
    scheme,
    from,
    to === undefined ? { ...from, xMm: from.xMm + 3000 } : { xMm: to.xUm / 1000, yMm: to.yUm / 1000, zMm: from.zMm },
  );
}
