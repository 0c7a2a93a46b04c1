import { corrugatedSheet, type Fold } from "../catalog/sections/corrugated-sheet.ts";
import { steels, type Steel } from "../catalog/materials.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import { demandAgainst } from "../checks/check.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";
import { stripFlows, type SheetStrip } from "./strip-flows.ts";

/** A whole piece of wall between uprights, in strips from one end to the other. */
export type SheetPiece = {
  readonly ownerId: string;
  readonly element: "side sheet" | "end sheet" | "roof sheet";
  readonly place: string;
  readonly fold: Fold;
  readonly thicknessMm: number;
  readonly heightMm: number;
  readonly strips: readonly SheetStrip[];
  /** What its numbers rest on: of a piece with a bare edge. */
  readonly said?: string;
};

/** Sheet in shear: the flow's mean over about a metre, as single strips depend on the mesh. */
export function sheetPart(piece: SheetPiece, basis: CheckBasis): StrengthPart {
  const { ownerId, element, place, heightMm, strips, said } = piece;
  const sheet = corrugatedSheet(piece.fold, piece.thicknessMm);
  const strengthAt = (steel: Steel) => basis.sheetShear({ sheet, steel, heightMm });
  const strength = strengthAt(steels.unproved);
  const widthsMm = Float64Array.from(strips, ({ widthMm }) => widthMm);
  const flowsOf = stripFlows(strips);
  return {
    id: `${ownerId} ${element} ${place}`,
    ownerId,
    element,
    place,
    ...(said !== undefined && { said }),
    level: "strength",
    use: (solved) => useOf(mostFlow(solved)),
    decide: (solved) => {
      const flow = mostFlow(solved);
      return {
        limitState: "sheet shear buckling",
        utilisation: useOf(flow),
        checks: (steel = steels.unproved) => [
          demandAgainst({ element, limitState: "sheet shear buckling" }, flow, strengthAt(steel)),
        ],
      };
    },
  };

  function mostFlow(solved: SolvedRun): number {
    return mostMeanOverAMetre(widthsMm, flowsOf(solved.flows(ownerId)));
  }

  function useOf(flow: number): number {
    return strength.ok ? flow / strength.available : Infinity;
  }
}

/** From each strip on as far as a metre goes; a piece that is shorter has one mean. */
function mostMeanOverAMetre(widthsMm: Float64Array, flows: Float64Array): number {
  let most = 0;
  for (let from = 0; from < widthsMm.length; from++) {
    let sum = 0;
    let width = 0;
    for (let n = from; n < widthsMm.length && width < METRE_MM; n++) {
      const own = widthsMm[n] ?? 0;
      sum += own * (flows[n] ?? 0);
      width += own;
    }
    // the last strips of a piece are in the mean that ends with them
    if (width >= METRE_MM || from === 0) most = Math.max(most, Math.abs(sum / width));
  }
  return most;
}

const METRE_MM = 1000;
