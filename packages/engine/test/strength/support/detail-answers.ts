import { containerMembers } from "../../../src/catalog/sections/container-members.ts";
import { frameTube } from "../../../src/catalog/sections/frame-tubes.ts";
import { weldFlow } from "../../../src/checks/frame-weld.ts";
import type { MemberDemand } from "../../../src/checks/member-demand.ts";
import type { ActionCase } from "../../../src/loads/action-case.ts";
import { lengthBeside } from "../../../src/strength/bars-on-one-line.ts";
import { padChecks } from "../../../src/strength/pad-parts.ts";
import type { ElementResult, PadSize } from "../../../src/strength/element-result.ts";
import { withPadSizes } from "../../../src/strength/pad-size.ts";
import { governingOf } from "../../../src/strength/screen.ts";
import { drawnUnit } from "../drawn-unit.ts";
import { basis, oneRun, ownWeight } from "../one-run.ts";

const nothing: MemberDemand = {
  ...{ axialN: 0, shearStrongN: 0, shearWeakN: 0 },
  ...{ momentStrongNmm: 0, momentWeakNmm: 0, torsionNmm: 0 },
};

/** Flow in a weld all round a tube of 100 × 100 mm under these forces, N/mm. */
export const weldFlowUnder = (forces: Partial<MemberDemand>): number =>
  weldFlow({ ...nothing, ...forces }, { depthMm: 100, widthMm: 100 });

/** Length over which a top rail welded along a frame tube would bow alone as it does beside it, of 12 m, mm. */
export const railBesideTubeMm = (): number => lengthBeside(containerMembers["top side rail"], frameTube, 12_000);

export const railAndTube = { rail: containerMembers["top side rail"], tube: frameTube };

/** Shear of the roof of a 40 ft unit with an open door end, pushed across its middle by 10 kN, N/mm. */
export function roofFlow(): number {
  const scheme = drawnUnit({});
  const push: ActionCase = {
    id: "push",
    symbol: "W",
    loads: [{ kind: "point", elementId: "u1", at: { xMm: 0, yMm: 0, zMm: 2896 }, xN: 0, yN: 10_000, zN: 0 }],
  };
  const { worsts } = oneRun(scheme, [ownWeight(scheme, 200_000), push]);
  const roof = worsts.find(({ part }) => part.element === "roof sheet");
  const [check] = roof === undefined ? [] : governingOf(roof).screened.checks();
  if (check?.ok !== true) throw new Error("the roof is checked");
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
