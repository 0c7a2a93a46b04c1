import { corrugatedSheet, type Fold } from "../catalog/sections/corrugated-sheet.ts";
import { steels, type Steel } from "../catalog/materials.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import { demandAgainst } from "../checks/check.ts";
import type { StrengthPart } from "./strength-part.ts";

/** A whole piece of wall between uprights, in strips from one end to the other. */
export type SheetPiece = {
  readonly ownerId: string;
  readonly element: "side sheet" | "end sheet";
  readonly place: string;
  readonly fold: Fold;
  readonly thicknessMm: number;
  readonly heightMm: number;
  readonly strips: readonly SheetStrip[];
};

/** One strip with the panels over one another in it. */
export type SheetStrip = {
  readonly widthMm: number;
  readonly panels: readonly { readonly id: string; readonly heightMm: number }[];
};

/** Sheet in shear: the flow's mean over about a metre, as single strips depend on the mesh. */
export function sheetPart(piece: SheetPiece, basis: CheckBasis): StrengthPart {
  const { ownerId, element, place, heightMm, strips } = piece;
  const sheet = corrugatedSheet(piece.fold, piece.thicknessMm);
  const strengthAt = (steel: Steel) => basis.sheetShear({ sheet, steel, heightMm });
  const strength = strengthAt(steels.unproved);
  return {
    id: `${ownerId} ${element} ${place}`,
    ownerId,
    element,
    place,
    level: "strength",
    screen: (solved) => {
      const flow = Math.max(...meansOverAMetre(strips, solved.unit(ownerId).panelFlows));
      return {
        limitState: "sheet shear buckling",
        utilisation: strength.ok ? flow / strength.available : Infinity,
        checks: (steel = steels.unproved) => [
          demandAgainst({ element, limitState: "sheet shear buckling" }, flow, strengthAt(steel)),
        ],
      };
    },
  };
}

/** From each strip on as far as a metre goes; a piece that is shorter has one mean. */
function meansOverAMetre(strips: readonly SheetStrip[], flows: Readonly<Record<string, number>>): number[] {
  const flow = strips.map((strip) => stripFlow(strip, flows));
  return strips.map((_, from) => {
    let [sum, width] = [0, 0];
    for (let n = from; n < strips.length && width < METRE_MM; n++) {
      const own = strips[n]?.widthMm ?? 0;
      sum += own * (flow[n] ?? 0);
      width += own;
    }
    // the last strips of a piece are in the mean that ends with them
    return width < METRE_MM && from > 0 ? 0 : Math.abs(sum / width);
  });
}

function stripFlow({ panels }: SheetStrip, flows: Readonly<Record<string, number>>): number {
  const heightMm = panels.reduce((sum, panel) => sum + panel.heightMm, 0);
  return panels.reduce((sum, { id, heightMm: own }) => sum + own * (flows[id] ?? 0), 0) / heightMm;
}

const METRE_MM = 1000;
