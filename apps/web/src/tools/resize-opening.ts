import { containerDimensions } from "@cornerway/engine";
import type { Container, Opening, Operation } from "@cornerway/schema";
import type { FacePointMm } from "./cut-opening.ts";

/** The edges of an opening a handle holds: −1 the nearer or lower, 1 the farther or upper, 0 neither. */
export interface HeldEdges {
  along: -1 | 0 | 1;
  up: -1 | 0 | 1;
}

const gridUm = 10_000;
const leastUm = 100_000;

/** An opening with the held edges drawn to a point of its face: on the 10 mm grid, to the edge of the sheet within reach. */
export function resizeOpening(
  unit: Container,
  opening: Opening,
  { along, up }: HeldEdges,
  to: FacePointMm,
  reachMm: number,
): Operation[] {
  const sheet = containerDimensions(unit.type).sheetZone(opening.face);
  const [offsetUm, endUm] = drawn(
    opening.offsetUm,
    opening.offsetUm + opening.widthUm,
    along,
    landed(to.uMm, [sheet.u0, sheet.u1], reachMm),
  );
  const [sillUm, headUm] = drawn(
    opening.sillUm,
    opening.sillUm + opening.heightUm,
    up,
    landed(to.vMm, [sheet.v0, sheet.v1], reachMm),
  );
  const shape = { offsetUm, sillUm, widthUm: endUm - offsetUm, heightUm: headUm - sillUm };
  const same =
    shape.offsetUm === opening.offsetUm &&
    shape.sillUm === opening.sillUm &&
    shape.widthUm === opening.widthUm &&
    shape.heightUm === opening.heightUm;
  return same ? [] : [{ kind: "opening.shape", id: opening.id, ...shape }];
}

/** On the edge of the sheet when near it, else on the grid; never off the sheet. */
function landed(mm: number, [least, most]: readonly [number, number], reachMm: number): number {
  const edge = [least, most].find((each) => Math.abs(each - mm) <= reachMm);
  const um = edge === undefined ? Math.round((mm * 1000) / gridUm) * gridUm : Math.round(edge * 1000);
  return Math.min(Math.round(most * 1000), Math.max(Math.round(least * 1000), um));
}

/** The two ends of a run with one of them drawn elsewhere, never nearer to the other than an opening is small. */
function drawn(from: number, to: number, held: -1 | 0 | 1, at: number): [number, number] {
  if (held === -1) return [Math.min(at, to - leastUm), to];
  return held === 1 ? [from, Math.max(at, from + leastUm)] : [from, to];
}
