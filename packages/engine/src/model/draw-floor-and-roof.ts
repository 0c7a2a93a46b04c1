import type { FreedomName, ModelPanel } from "./analytical-model.ts";
import { nearestLine } from "./nearest-line.ts";
import { holdsTwist } from "./twist-holds.ts";
import type { UnitDraft } from "./unit-draft.ts";
import type { SideName } from "./unit-lines.ts";

/**
 * Cross members, pinned for upright bending since the channel rail cannot hold them in torsion, and the floor's shear. Where one
 * holds the rail against the twist of a seat beside it (twist-holds.ts) its end is stiff, as it is welded.
 */
export function drawFloor(draft: UnitDraft): void {
  const { lengthMm, widthMm, floorBays, bottomRailMm } = draft.lines;
  for (let n = 1; n < floorBays; n++) {
    const u = (lengthMm * n) / floorBays;
    const ends = [railNode(draft, "right", u, bottomRailMm), railNode(draft, "left", u, bottomRailMm)] as const;
    const beam = draft.addBeam("cross", ...ends, "crossMember", {
      ...(!holdsTwist(draft.twistHolds, "right", n) && { rel_i: PINNED }),
      ...(!holdsTwist(draft.twistHolds, "left", n) && { rel_j: PINNED }),
    });
    const middle = { x: u - lengthMm / 2, y: 0, z: bottomRailMm };
    draft.carriers.push({ beam, face: "floor", stripMm: lengthMm / floorBays, lengthMm: widthMm, ...middle });
  }
  drawDiaphragm(draft, "floor", bottomRailMm);
}

export function drawRoof(draft: UnitDraft): void {
  drawDiaphragm(draft, "roof", draft.lines.topRailMm);
}

const PINNED: readonly FreedomName[] = ["ry"];

/** Between the side rails, bay by bay. */
function drawDiaphragm(draft: UnitDraft, kind: "floor" | "roof", z: number): void {
  const { lengthMm, floorBays } = draft.lines;
  const node = (side: SideName, n: number): string => railNode(draft, side, (lengthMm * n) / floorBays, z);
  const sheet = { of: kind, layered: false };
  for (let n = 0; n < floorBays; n++) {
    const nodes: ModelPanel["nodes"] = [node("right", n), node("right", n + 1), node("left", n + 1), node("left", n)];
    draft.addPanel(kind, nodes, sheet);
  }
}

/** The rail node at a floor station: where a line of the wall took it over, that line. */
function railNode(draft: UnitDraft, side: SideName, u: number, z: number): string {
  const { columns } = draft.grids[side];
  return draft.place(side, columns[nearestLine(columns, u)] ?? u, z);
}
