import type { Scheme } from "@cornerway/schema";
import { steelModulus, type Steel } from "../catalog/materials.ts";
import type { CorrugatedSheet } from "../catalog/sections/corrugated-sheet.ts";
import type { PlainPad } from "../codes/concrete/plain-pad.ts";
import { mostBowedN, type BowedMember, type LeaningStorey } from "../codes/steel/amplification.ts";
import type { EndPlate } from "../codes/steel/base-plate.ts";
import type { ConcreteBearing } from "../codes/steel/bearing.ts";
import type { Chord } from "../codes/steel/tube-wall.ts";
import type { FilletWeld } from "../codes/steel/fillet-weld.ts";
import type { DesignMethod } from "../working/design-method.ts";
import type { Resistance } from "../working/resistance.ts";
import type { Working } from "../working/working.ts";
import { bowCheck, leanCheck } from "./amplification.ts";
import { anchors, type AnchoredPlate } from "./anchors.ts";
import type { Check } from "./check.ts";
import type { CheckedMember, MemberStrengths } from "./checked-member.ts";
import { codeBasis } from "./code-basis.ts";
import { cornerFitting, type FittingForce } from "./corner-fitting.ts";
import { cornerPost, cornerPostAtBest, type PostDemand, type PostElement } from "./corner-post.ts";
import { deflection, type Deflection } from "./deflection.ts";
import { basePlate, capPlate } from "./end-plate.ts";
import { floorBoards, type BoardLoad } from "./floor-boards.ts";
import { forceOnBeam, type BeamForce } from "./force-on-beam.ts";
import { forceOnTubeBeam, type TubeForce } from "./force-on-tube.ts";
import { frameWeld } from "./frame-weld.ts";
import { jointStrengths, type JointStrengths } from "./joint-strengths.ts";
import type { CheckedElement, LimitState } from "./limit-state.ts";
import { lockTogether } from "./lock.ts";
import { memberChecks } from "./member-checks.ts";
import type { MemberDemand } from "./member-demand.ts";
import { memberStrengths } from "./member-strengths.ts";
import {
  capacitiesOf,
  memberUse,
  memberUtilisation,
  utilisationAmong,
  type Capacities,
  type Deciding,
} from "./member-utilisation.ts";
import { padConcrete } from "./pad-concrete.ts";
import { doorPostBounds, frontPostBounds, type PostBounds } from "./post-bounds.ts";
import { remembered } from "./remembered.ts";
import { seatOnPressedRail, seatOnTubeRail, type PressedRail, type SeatForce, type TubeRail } from "./seat-on-rail.ts";
import { sheetBending } from "./sheet-bending.ts";
import { sheetCrushing, type PressedSheet } from "./sheet-crushing.ts";
import { sheetShear } from "./sheet-shear/sheet-shear.ts";
import { soilBearing, type PadOnSoil } from "./soil-bearing.ts";
import { wallShear, type CountedWall, type WallShearFinding } from "./wall-shear.ts";
import { filletStrength } from "./weld.ts";

type PlainPost = { readonly steel: Steel; readonly clearMm: number };
type PlainPanel = { readonly sheet: CorrugatedSheet; readonly steel: Steel; readonly heightMm: number };
type PlatedPost = Parameters<typeof basePlate>[0];

/**
 * Every check of steel, behind one face: whoever asks does not know which set of codes answers. Another set is another
 * object of this shape. Forces N, lengths mm, moments N·mm.
 */
export type CheckBasis = {
  readonly method: DesignMethod;
  memberStrengths(member: CheckedMember): MemberStrengths;
  /** Plain numbers of a set of strengths, for `memberUtilisation`. */
  capacities(strengths: MemberStrengths): Capacities;
  /** Greatest utilisation under one set of forces, for running through combinations. */
  memberUse(capacities: Capacities, demand: MemberDemand): number;
  /** What decides under one set of forces, without workings. */
  memberUtilisation(capacities: Capacities, demand: MemberDemand): Deciding;
  /** The same among these limit states alone, as far as their strengths are stated. */
  utilisationAmong(among: ReadonlySet<LimitState>, capacities: Capacities, demand: MemberDemand): Deciding;
  /** Every limit state with its working. */
  memberChecks(strengths: MemberStrengths, demand: MemberDemand): readonly Check[];
  /** A pressed member's own bow, at strength level, and the compression at which it is half as much again. */
  bow(element: CheckedElement, bowed: BowedMember): Check;
  mostBowedN(bowed: Omit<BowedMember, "axialN">): number;
  /** A storey's own lean, at strength level. */
  lean(storey: LeaningStorey): Check;
  frontPost(post: PlainPost): PostBounds;
  doorPost(post: PlainPost): PostBounds;
  cornerPost(
    element: PostElement,
    demand: PostDemand,
    bounds: PostBounds,
    proof: Working,
  ): ReturnType<typeof cornerPost>;
  /** A post held by its sheet and no weaker in compression than its proof load: beyond it, it is beyond every bound. */
  cornerPostAtBest(element: PostElement, demand: PostDemand, bounds: PostBounds, proof: Working): Check;
  cornerFitting(force: FittingForce, demandN: number, stacking: Working): Check;
  sheetShear(panel: PlainPanel): Resistance;
  sheetBending(sheet: CorrugatedSheet, steel: Steel): Resistance;
  /** A wall of the lateral system; its force is at allowable-stress level whatever the method. */
  wall(wall: Omit<CountedWall, "sheet"> & { readonly panel: PlainPanel }): WallShearFinding;
  fillet(weld: FilletWeld): Resistance;
  /** A tube welded all round at its end; `strength` of 100 mm of the weld. */
  readonly frameWeld: typeof frameWeld;
  seatOnPressedRail(rail: PressedRail, seat: SeatForce): readonly Check[];
  seatOnTubeRail(rail: TubeRail, seat: SeatForce): readonly Check[];
  forceOnBeam(force: BeamForce): readonly Check[];
  forceOnTubeBeam(chord: Chord, force: TubeForce, narrow: boolean): readonly Check[];
  basePlate(
    element: PlatedPost,
    compressionN: number,
    plate: EndPlate,
    concrete: Pick<ConcreteBearing, "supportMm2" | "concreteMpa">,
  ): readonly Check[];
  capPlate(element: "added post", compressionN: number, plate: EndPlate): Check;
  /** Bolts, plates and tube walls of made connections. */
  readonly joints: JointStrengths;
  /** Strength design only: forces are factored whatever the method. */
  anchors(plate: AnchoredPlate): readonly Check[];
  /** Strength design only, as plain concrete. */
  padConcrete(pad: PlainPad, forceN: number): readonly Check[];
  /** At allowable-stress level whatever the method. */
  soilBearing(pad: PadOnSoil): Check;
  sheetCrushing(pressed: PressedSheet): Check;
  floorBoards(load: BoardLoad): Check;
  /** Forces at allowable-stress level whatever the method. */
  readonly lock: typeof lockTogether;
  deflection(movement: Deflection): Check;
};

/** The checks of the set of codes an adopted building code brings with it. */
export function checkBasisOf(edition: Scheme["site"]["edition"], method: DesignMethod): CheckBasis {
  const basis = codeBasis(edition, method);
  const shearBy = (by: DesignMethod) =>
    remembered((panel: PlainPanel) => sheetShear({ ...panel, modulusMpa: steelModulus.valueMpa }, by));
  const [shear, shearOfWalls] = [shearBy(method), shearBy("ASD")];
  return {
    method,
    memberStrengths: remembered((member: CheckedMember) => memberStrengths(member, basis)),
    capacities: capacitiesOf,
    memberUse,
    memberUtilisation,
    utilisationAmong,
    memberChecks,
    bow: (element, bowed) => bowCheck(element, bowed, basis.steel),
    mostBowedN,
    lean: (storey) => leanCheck(storey, basis.steel),
    frontPost: remembered((post) => frontPostBounds(post, basis.thin)),
    doorPost: remembered((post) => doorPostBounds(post, basis.thin)),
    cornerPost: (element, demand, bounds, proof) => cornerPost(element, demand, bounds, proof, basis.thin),
    cornerPostAtBest: (element, demand, bounds, proof) => cornerPostAtBest(element, demand, bounds, proof, basis.thin),
    cornerFitting: (force, demandN, stacking) => cornerFitting(force, demandN, stacking, method),
    sheetShear: shear,
    sheetBending: (sheet, steel) => sheetBending(sheet, steel, basis.thin),
    wall: ({ panel, ...wall }) => wallShear({ ...wall, sheet: shearOfWalls(panel) }, edition),
    fillet: (weld) => filletStrength(weld, basis.steel, basis.thin),
    frameWeld,
    seatOnPressedRail: (rail, seat) => seatOnPressedRail(rail, seat, basis),
    seatOnTubeRail: (rail, seat) => seatOnTubeRail(rail, seat, basis),
    forceOnBeam: (force) => forceOnBeam(force, basis.steel),
    forceOnTubeBeam: (chord, force, narrow) => forceOnTubeBeam(chord, force, narrow, basis.steel),
    basePlate: (element, compressionN, plate, concrete) =>
      basePlate(element, compressionN, plate, concrete, basis.steel),
    capPlate: (element, compressionN, plate) => capPlate(element, compressionN, plate, basis.steel),
    joints: jointStrengths(basis.steel),
    lock: lockTogether,
    anchors,
    padConcrete,
    soilBearing,
    floorBoards: (load) => floorBoards(load, method),
    sheetCrushing: (pressed) => sheetCrushing(pressed, method),
    deflection: (movement) => deflection(movement, edition),
  };
}
