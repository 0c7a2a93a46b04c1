import { toLocal } from "../../geometry/place.ts";
import type { Working } from "../../working/working.ts";
import type { ActionCase, ActionLoad } from "../action-case.ts";
import type { BuildingFrame } from "../building-frame.ts";
import { caseResultant } from "../case-resultant.ts";
import { factorOf, type LoadCombination } from "../load-combination.ts";
import { bodiesOf, type Body } from "./bodies.ts";
import { overturning, overturningUse, sliding, slidingUse, uplift, upliftUse } from "./rigid-body.ts";

/** The worst of one way to lose one body: which wind, which combination, and the working. */
export type StabilityFinding = {
  readonly body: Body;
  readonly mode: "turns over" | "slides" | "lifts off";
  readonly caseId: string;
  readonly combinationId: string;
  readonly working: Working;
};

/**
 * Units as they arrive, standing on their bearings with nothing but their least weight and friction: turning over,
 * sliding and lifting off of each unit, stack and the whole, under every wind case and every combination of wind with
 * the least dead load. Wind on a unit reaches the body through the unit. Bodies whose upper units also stand elsewhere
 * are not judged: see `Body.shared`. `among`: the bodies to judge, by name; absent: all.
 */
export function bareStability(
  building: BuildingFrame,
  dead: ActionCase,
  winds: readonly ActionCase[],
  combinations: readonly LoadCombination[],
  friction: number,
  among?: readonly string[],
): StabilityFinding[] {
  const light = combinations.filter(
    (one) => factorOf(one, "W") > 0 && one.terms.every(({ symbol }) => symbol === "D" || symbol === "W"),
  );
  return bodiesOf(building)
    .filter(({ id, shared }) => !shared && among?.includes(id) !== false)
    .flatMap((body) => {
      const own = bodyForces(building, body, dead);
      const tried = winds.flatMap((wind) => {
        const blown = bodyForces(building, body, wind);
        return light.flatMap((combination) =>
          modes(body, own, blown, combination, friction).map((found): Tried => ({
            ...found,
            body,
            caseId: wind.id,
            combinationId: combination.id,
          })),
        );
      });
      return (["turns over", "slides", "lifts off"] as const).flatMap((mode) =>
        worst(tried.filter((one) => one.mode === mode)),
      );
    });
}

type Forces = {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly aboutX: number;
  readonly aboutY: number;
};

/** Resultant on a body at the middle of its base, in the building's axes. */
function bodyForces({ axes, boxes }: BuildingFrame, body: Body, action: ActionCase): Forces {
  const loads = action.loads.filter((load) => body.unitIds.includes(unitOf(load)));
  const { base } = body;
  const about = { xMm: (base.x0 + base.x1) / 2, yMm: (base.y0 + base.y1) / 2, zMm: base.zMm };
  const cos = axes.cos;
  const sin = axes.sin;
  const site = { xMm: about.xMm * cos - about.yMm * sin, yMm: about.xMm * sin + about.yMm * cos, zMm: about.zMm };
  const sum = caseResultant(
    { ...action, loads },
    boxes.map(({ placed }) => placed),
    site,
  );
  const force = toLocal(axes, { xMm: sum.xN, yMm: sum.yN, zMm: 0 });
  const moment = toLocal(axes, { xMm: sum.aboutXNmm, yMm: sum.aboutYNmm, zMm: 0 });
  return { x: force.xMm, y: force.yMm, z: sum.zN, aboutX: moment.xMm, aboutY: moment.yMm };
}

function unitOf(load: ActionLoad): string {
  return "containerId" in load ? load.containerId : load.elementId;
}

function modes({ id, base }: Body, dead: Forces, wind: Forces, combination: LoadCombination, friction: number): Way[] {
  const d = factorOf(combination, "D");
  const w = factorOf(combination, "W");
  const weightN = -d * dead.z;
  const upliftN = w * wind.z;
  const total = { aboutX: d * dead.aboutX + w * wind.aboutX, aboutY: d * dead.aboutY + w * wind.aboutY };
  const halfX = (base.x1 - base.x0) / 2;
  const halfY = (base.y1 - base.y0) / 2;
  // Moments about the middle of the base: uplift at the middle turns about an edge with the half width.
  const edges = [
    { edge: "+x", leverMm: halfX, momentNmm: total.aboutY + upliftN * halfX },
    { edge: "-x", leverMm: halfX, momentNmm: -total.aboutY + upliftN * halfX },
    { edge: "+y", leverMm: halfY, momentNmm: -total.aboutX + upliftN * halfY },
    { edge: "-y", leverMm: halfY, momentNmm: total.aboutX + upliftN * halfY },
  ];
  const horizontalN = w * Math.sqrt(wind.x * wind.x + wind.y * wind.y);
  const slid = { weightN, upliftN, horizontalN, friction, seismic: false };
  return [
    ...edges.map((one): Way => ({
      mode: "turns over",
      use: overturningUse({ weightN, ...one }),
      working: () => overturning({ body: id, weightN, ...one }),
    })),
    { mode: "slides", use: slidingUse(slid), working: () => sliding({ body: id, ...slid }) },
    { mode: "lifts off", use: upliftUse(weightN, upliftN), working: () => uplift(id, weightN, upliftN) },
  ];
}

/** One way to lose a body; its working is written where it is the worst of its mode. */
type Way = {
  readonly mode: StabilityFinding["mode"];
  /** Infinite, worse than any other, for a body with no friction or no base left. */
  readonly use: number;
  readonly working: () => Working;
};

type Tried = Way & Omit<StabilityFinding, "working">;

function worst(tried: readonly Tried[]): StabilityFinding[] {
  const [first, ...rest] = tried;
  if (first === undefined) return [];
  const { body, mode, caseId, combinationId, working } = rest.reduce(
    (heaviest, one) => (one.use > heaviest.use ? one : heaviest),
    first,
  );
  return [{ body, mode, caseId, combinationId, working: working() }];
}
