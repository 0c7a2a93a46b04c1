import type { Certainty } from "@cornerway/schema";
import { containerMembers } from "../catalog/sections/container-members.ts";
import { doorPost } from "../catalog/sections/door-post.ts";
import type { Steel } from "../catalog/materials.ts";
import { wallsAlong } from "../catalog/sections/open-section.ts";
import type { PressedSection } from "../catalog/sections/section.ts";
import { aisi, flexureFactors, shearFactors, type ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { letModulus, letYield } from "../codes/steel/steel-basis.ts";
import { openWorking } from "../working/open-working.ts";
import type { Resistance } from "../working/resistance.ts";
import { stateResistance } from "../working/state-resistance.ts";
import type { DoorPost } from "./door-post-strength.ts";
import type { FrontPost } from "./front-post.ts";

/**
 * A post in shear along each axis of its outline and in torsion. In a closed cell the walls that bear shear along one axis are
 * not those that bear it along the other, as AISC 360 G4 has it for structural tubes; torsion runs in all of them.
 */
export type PostShear = {
  readonly shearX: Resistance;
  readonly shearY: Resistance;
  readonly torsion: Resistance;
  readonly closed: boolean;
};

/** Equal walls that bear shear side by side. */
type Wall = { readonly name: string; readonly widthMm: number; readonly thicknessMm: number; readonly count: number };
type Origin = { readonly name: string; readonly source: string; readonly certainty: Certainty };

/** Front post: the one wall along each axis bears the shear; the whole torque is St Venant shear, warping left out. */
export function frontPostShear({ steel, section: given }: FrontPost, basis: ColdFormedBasis): PostShear {
  const section = given ?? containerMembers["front corner post"];
  const { thicknessMm } = section;
  const one = { thicknessMm, count: 1 };
  const across = { name: "wall across", widthMm: longestWallMm(section, "xMm"), ...one };
  const along = { name: "wall along", widthMm: longestWallMm(section, "yMm"), ...one };
  return {
    closed: false,
    shearX: wallShear(across, section, steel, basis),
    shearY: wallShear(along, section, steel, basis),
    torsion: torsion("J/t", section.jMm4 / thicknessMm, section, steel, basis),
  };
}

/** Door post: both walls of its cell along each axis, the thinner twice; torsion as the flow round the cell in its thinnest wall, 2 A t. */
export function doorPostShear({ steel, section = doorPost }: DoorPost, basis: ColdFormedBasis): PostShear {
  const { acrossMm, alongMm, wallMm } = section.cell;
  const two = { thicknessMm: wallMm, count: 2 };
  return {
    closed: true,
    shearX: wallShear({ name: "plates across", widthMm: acrossMm, ...two }, section, steel, basis),
    shearY: wallShear({ name: "plates along", widthMm: alongMm, ...two }, section, steel, basis),
    torsion: torsion("2 A t", 2 * acrossMm * alongMm * wallMm, section, steel, basis),
  };
}

/** The longest straight wall of an outline that runs along an axis; 0 where none does. */
function longestWallMm({ outline, thicknessMm }: PressedSection, axis: "xMm" | "yMm"): number {
  const other = axis === "xMm" ? "yMm" : "xMm";
  const lengths = wallsAlong(outline, thicknessMm)
    .filter(({ from, to }) => from[other] === to[other])
    .map(({ from, to }) => Math.abs(to[axis] - from[axis]));
  return Math.max(0, ...lengths);
}

/** Flat walls in shear, held on both edges (G2.1; k_v 5.34), N; a lower bound of the post. */
function wallShear(wall: Wall, origin: Origin, steel: Steel, basis: ColdFormedBasis): Resistance {
  const working = openWorking(`Corner post in shear, ${wall.name}`, aisi(basis, "G2.1, bounded"));
  letModulus(working);
  letYield(working, steel);
  working.let("h", wall.widthMm, "mm", `${wall.name}, ${origin.name}`, origin.certainty, origin.source);
  working.let("t", wall.thicknessMm, "mm", "thickness", origin.certainty, origin.source);
  working.let("k_v", 5.34, "1", "wall without stiffeners", "memory");
  working.let("n", wall.count, "1", "walls", "derived");
  working.compute("V_y", "n*0.6*h*t*F_y", "N", "Eq. G2.1-5");
  working.compute("V_cr", "n*h*t*π^2*E*k_v/(12*(1 - 0.3^2)*(h/t)^2)", "N", "Eq. G2.3-1, G2.3-2");
  const stocky = working.when("sqrt(V_y/V_cr)", "<=", "0.815", "G2.1");
  working.compute("V_n", stocky ? "V_y" : "min(0.815*sqrt(V_cr*V_y), V_cr)", "N", "Eq. G2.1-1 to -3");
  return stateResistance(working, "V_n", "N", shearFactors, basis.method);
}

function torsion(
  meaning: string,
  modulusMm3: number,
  origin: Origin,
  steel: Steel,
  basis: ColdFormedBasis,
): Resistance {
  const working = openWorking("Corner post in torsion, bounded", aisi(basis, "shear yield, bounded"));
  letYield(working, steel);
  working.let("C", modulusMm3, "mm³", `${meaning}, ${origin.name}`, origin.certainty, origin.source);
  working.compute("T_n", "0.6*F_y*C", "N·mm");
  return stateResistance(working, "T_n", "N·mm", flexureFactors, basis.method);
}
