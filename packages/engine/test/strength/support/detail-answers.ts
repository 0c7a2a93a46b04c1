import { e70Mpa, steels } from "../../../src/catalog/materials.ts";
import { containerMembers } from "../../../src/catalog/sections/container-members.ts";
import { frameTube } from "../../../src/catalog/sections/frame-tubes.ts";
import { codeBasis } from "../../../src/checks/code-basis.ts";
import { frameWeld, weldFlow } from "../../../src/checks/frame-weld.ts";
import { holdingEnd } from "../../../src/checks/holding-end.ts";
import type { MemberDemand } from "../../../src/checks/member-demand.ts";
import { warpedUse } from "../../../src/checks/rail-twist.ts";
import type { ActionCase } from "../../../src/loads/action-case.ts";
import { usualAssumptions } from "../../../src/model/model-assumptions.ts";
import { lengthBeside } from "../../../src/strength/bars-on-one-line.ts";
import { padChecks } from "../../../src/strength/pad-parts.ts";
import type { ElementResult, PadSize } from "../../../src/strength/element-result.ts";
import { withPadSizes } from "../../../src/strength/pad-size.ts";
import { governingOf } from "../../../src/strength/screen.ts";
import type { Screened } from "../../../src/strength/strength-part.ts";
import { drawnUnit } from "../drawn-unit.ts";
import { basis, firstSet, oneRun, ownWeight } from "../one-run.ts";

const nothing: MemberDemand = {
  ...{ axialN: 0, shearStrongN: 0, shearWeakN: 0 },
  ...{ momentStrongNmm: 0, momentWeakNmm: 0, torsionNmm: 0 },
};

/** Flow in a weld all round a tube of 100 × 100 mm under these forces, N/mm. */
export const weldFlowUnder = (forces: Partial<MemberDemand>): number =>
  weldFlow({ ...nothing, ...forces }, { depthMm: 100, widthMm: 100 }, 1);

/** The same, as if along the weld, for a weld that takes so many times as much across its line as along it. */
export const weldFlowAsAlong = (forces: Partial<MemberDemand>, acrossOverAlong: number): number =>
  weldFlow({ ...nothing, ...forces }, { depthMm: 100, widthMm: 100 }, 1 / acrossOverAlong);

/** Use of a weld all round a tube of 60 × 60 × 3 mm of the frame's steel, 5 mm legs, under these forces, LRFD. */
export function thinWeldUse(forces: Partial<MemberDemand>): number {
  const weld = { legMm: 5, lengthMm: 100, electrodeMpa: e70Mpa, endLoaded: false, tubeEnd: true } as const;
  const thinner = { thicknessMm: 3, steel: steels.tube };
  const check = frameWeld(
    { element: "jamb", limitState: "weld" },
    { ...nothing, ...forces },
    { depthMm: 60, widthMm: 60 },
    {
      along: basis.factored.fillet({ ...weld, angleDegree: 0, thinner }),
      across: basis.factored.fillet({ ...weld, angleDegree: 90, thinner }),
    },
  );
  if (!check.ok) throw new Error("the weld has a strength");
  return check.utilisation;
}

/** Length over which a top rail welded along a frame tube would bow alone as it does beside it, of 12 m, mm. */
export const railBesideTubeMm = (): number => lengthBeside(containerMembers["top side rail"], frameTube, 12_000);

export const railAndTube = { rail: containerMembers["top side rail"], tube: frameTube };

/**
 * The roof of a 40 ft unit with an open door end, pushed across its middle by 10 kN; `headerTimes`: so many times as stiff a
 * header over its doors as there is.
 */
export function pushedRoof(headerTimes = 1): Screened {
  const scheme = drawnUnit({});
  const push: ActionCase = {
    id: "push",
    symbol: "W",
    loads: [{ kind: "point", elementId: "u1", at: { xMm: 0, yMm: 0, zMm: 2896 }, xN: 0, yN: 10_000, zN: 0 }],
  };
  const { doorHeader, ...others } = usualAssumptions.sections;
  if (doorHeader === undefined) throw new Error("there is a header over the doors");
  const header = { ...doorHeader, E: headerTimes * doorHeader.E, G: headerTimes * doorHeader.G };
  const assumptions = { ...usualAssumptions, sections: { ...others, doorHeader: header } };
  const { worsts } = oneRun(scheme, [ownWeight(scheme, 200_000), push], { set: { ...firstSet(), assumptions } });
  const roof = worsts.find(({ part }) => part.element === "roof sheet");
  if (roof === undefined) throw new Error("the roof is checked");
  return governingOf(roof).screened;
}

/** Its shear, N/mm. */
export function roofFlow(headerTimes = 1): number {
  const [check] = pushedRoof(headerTimes).checks();
  if (check?.ok !== true) throw new Error("the sheet has a strength");
  return check.working.symbols.find(({ symbol }) => symbol === "demand")?.value ?? Number.NaN;
}

/** The pad named for one of 0.6 m under 100 kN on ground of 71.8 kPa, pulled by so much, mm. */
export function namedPad(pullN: number): PadSize | undefined {
  const result = (place: string, forceN: number): ElementResult => ({
    id: `p ${place}`,
    ownerId: "p",
    element: "pad",
    place,
    limitState: "bearing on soil",
    forceN,
    utilisation: 2,
    governingRun: "",
    assumptions: "locks at play",
    held: [],
    envelope: {},
    covered: "checked",
  });
  const pad = {
    ...{ id: "p", tag: "P", xUm: 0, yUm: 0, topZUm: 0, turnMdeg: 0 },
    ...{ lengthUm: 600_000, widthUm: 600_000, depthUm: 500_000 },
  };
  const ground = { kind: "report", bearingKpa: 71.8, source: "sample" } as const;
  const asked = [result("ground", 100_000), ...(pullN > 0 ? [result("its own weight", pullN)] : [])];
  const [sized] = withPadSizes(asked, [pad], ({ sideMm, depthMm }) =>
    padChecks({ lengthMm: sideMm, widthMm: sideMm, depthMm }, ground, 17.2, basis),
  );
  return sized?.wouldDo;
}

/** Use of a bottom rail by warping alone, twisted by this torque midway between two cross members, 79 mm from the seat's plate, LRFD. */
export const twistedRailUse = (torsionNmm: number): number =>
  warpedUse(
    { section: containerMembers["bottom side rail"], nearMm: 79, farMm: 79, lineMm: 90, baseMm: 12.5 },
    steels.unproved,
    codeBasis("IBC 2021", "LRFD"),
  )({ ...nothing, torsionNmm });

/** Use of the web of a bottom rail under the end of a cross member that keeps it from turning, LRFD. */
export function webUnderCrossMemberUse(momentNmm: number): number {
  const end = {
    cross: containerMembers["cross member"],
    rail: containerMembers["bottom side rail"],
    steel: steels.unproved,
  };
  const web = holdingEnd(end, momentNmm, codeBasis("IBC 2021", "LRFD")).find(
    ({ element }) => element === "bottom side rail",
  );
  return web?.ok === true ? web.utilisation : Number.NaN;
}
