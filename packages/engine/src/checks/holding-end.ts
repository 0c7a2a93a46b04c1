import { e70Mpa, type Steel } from "../catalog/materials.ts";
import type { PressedSection } from "../catalog/sections/section.ts";
import { letYield, memberFactors } from "../codes/steel/steel-basis.ts";
import { openWorking } from "../working/open-working.ts";
import { refused, type Resistance } from "../working/resistance.ts";
import { stateResistance } from "../working/state-resistance.ts";
import { demandAgainst, type Check } from "./check.ts";
import type { CodeBasis } from "./code-basis.ts";
import { filletStrength } from "./weld.ts";

/** A cross member welded to the web of a bottom rail that it keeps from turning. */
export type HoldingEnd = { readonly cross: PressedSection; readonly rail: PressedSection; readonly steel: Steel };

/** Of the fillet round the end of a cross member, mm: common practice, no published source. */
const LEG_MM = 3;

/** The couple of its flanges on the fillets along their outer faces, and on the web of the rail. */
export function holdingEnd(end: HoldingEnd, momentNmm: number, basis: CodeBasis): readonly Check[] {
  const { cross, rail, steel } = end;
  const depthMm = flatWebMm(cross);
  const couple = openWorking("Couple of a cross member's flanges", statics);
  couple.let("M", Math.abs(momentNmm), "N·mm", "end moment", "derived", "analysis");
  couple.let("d", depthMm, "mm", "between the middles of its flanges", "derived");
  couple.compute("F", "M/d", "N");
  const force = couple.giving("F");
  const thinner = { thicknessMm: Math.min(cross.thicknessMm, rail.thicknessMm), steel };
  const weld = { legMm: LEG_MM, lengthMm: narrowerMm(cross), angleDegree: 0, electrodeMpa: e70Mpa, thinner };
  const fillet = filletStrength({ ...weld, endLoaded: false, tubeEnd: true }, basis.steel, basis.thin);
  return [
    demandAgainst({ element: "cross member", limitState: "weld" }, force, fillet),
    demandAgainst({ element: "bottom side rail", limitState: "wall plastification" }, force, webOfRail(end, basis)),
  ];
}

const statics = { document: "Statics", edition: "none", place: "couple", certainty: "derived" } as const;

/**
 * The web of the rail under one flange of the cross member, N: a strip as wide as the flange and what spreads at 45° to the
 * nearer flange of the rail, hinged plastically there, at the other flange and under the force. Where the cross member stands in the
 * depth of the rail is not known: the farthest that its flange can be from the rail's, which is the weakest place.
 */
export function webOfRail({ cross, rail, steel }: HoldingEnd, basis: CodeBasis): Resistance {
  const [railMm, crossMm] = [flatWebMm(rail), flatWebMm(cross)];
  if (crossMm >= railMm) return refused("shape not covered by this check");
  const clause = { ...statics, place: "plastic hinges in a web" } as const;
  const working = openWorking("Web of a rail under a cross member's flange", clause);
  letYield(working, steel);
  working.let("t", rail.thicknessMm, "mm", `web, ${rail.name}`, rail.certainty, rail.source);
  working.let("h", railMm, "mm", "between the middles of the rail's flanges", "derived");
  working.let("d", crossMm, "mm", "between the middles of the cross member's flanges", "derived");
  working.let("b", narrowerMm(cross), "mm", "flange of the cross member", "derived");
  working.compute("c", "h - d", "mm");
  working.compute("m", "F_y*t^2/4", "N·mm/mm");
  working.compute("F_n", "2*m*(b + 2*c)*(1/c + 1/(h - c))", "N");
  return stateResistance(working, "F_n", "N", memberFactors, basis.steel.method);
}

const heights = ({ outline }: PressedSection): number[] => outline.map(({ yMm }) => yMm);
const flatWebMm = (section: PressedSection): number => Math.max(...heights(section)) - Math.min(...heights(section));

/** Outside width of the narrower flange. */
function narrowerMm({ outline, thicknessMm }: PressedSection): number {
  const tips = [outline[0], outline.at(-1)].map((tip) => Math.abs((tip?.xMm ?? 0) - (outline[1]?.xMm ?? 0)));
  return Math.min(...tips) + thicknessMm / 2;
}
