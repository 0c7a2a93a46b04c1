import type { ModelNode } from "../model/analytical-model.ts";
import type { UnitFragment } from "../model/building-model.ts";
import type { UnitLines } from "../model/unit-lines.ts";

/** A line of a container's model with what it is and where its middle lies. */
export type UnitBeam = {
  readonly id: string;
  /** The model's own word for it: `bottomRail`, `jamb`, `post`… */
  readonly kind: string;
  readonly section: string;
  readonly lengthMm: number;
  /** Of its middle: along the unit from the front post axis, across from the middle, up from the underside. */
  readonly uMm: number;
  readonly yMm: number;
  readonly zMm: number;
  readonly side: "left" | "right";
  /** Its ends in the container's own axes, mm. */
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
};

/** The lines of one container in the order of the model. */
export function unitBeams({ beams, nodes }: UnitFragment, { lengthMm }: UnitLines): UnitBeam[] {
  const places = new Map(nodes.map((node) => [node.id, node]));
  const place = (id: string): ModelNode => {
    const found = places.get(id);
    if (found === undefined) throw new RangeError(`the model has no node ${id}`);
    return found;
  };
  return beams.map(({ id, i, j, section }) => {
    const [from, to] = [place(i), place(j)];
    const [x, y, z] = [to.x - from.x, to.y - from.y, to.z - from.z];
    return {
      id,
      kind: id.slice(0, id.indexOf("#")),
      section,
      lengthMm: Math.sqrt(x * x + y * y + z * z),
      uMm: (from.x + to.x) / 2 + lengthMm / 2,
      yMm: (from.y + to.y) / 2,
      zMm: (from.z + to.z) / 2,
      side: from.y + to.y > 0 ? "left" : "right",
      from: [from.x, from.y, from.z],
      to: [to.x, to.y, to.z],
    };
  });
}
