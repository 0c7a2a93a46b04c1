import { toLocal } from "../../geometry/place.ts";
import type { Working } from "../../working/working.ts";
import type { ActionCase, ActionLoad } from "../action-case.ts";
import type { BuildingFrame } from "../building-frame.ts";
import { caseResultant } from "../case-resultant.ts";
import { factorOf, type LoadCombination } from "../load-combination.ts";
import { bodiesOf, type Body } from "./bodies.ts";
import {
  overturning,
  overturningUse,
  sliding,
  slidingUse,
  uplift,
  upliftUse,
  type Overturning,
  type Sliding,
} from "./rigid-body.ts";

/** The worst of one way to lose one body: which wind, which combination, and the working. */
export type StabilityFinding = {
  readonly body: Body;
  readonly mode: Mode;
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
      const found = new Map<Mode, Tried>();
      for (const wind of winds) {
        const blown = bodyForces(building, body, wind);
        for (const combination of light)
          keepWorst(found, sumOn(body, own, blown, combination, friction), wind.id, combination.id);
      }
      return MODES.flatMap((mode) => findingOf(body, found.get(mode)));
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

/** What turns, slides and lifts a body in one sum. */
type Sum = { readonly edges: readonly Omit<Overturning, "body">[]; readonly slid: Omit<Sliding, "body"> };

function sumOn({ base }: Body, dead: Forces, wind: Forces, combination: LoadCombination, friction: number): Sum {
  const d = factorOf(combination, "D");
  const w = factorOf(combination, "W");
  const weightN = -d * dead.z;
  const upliftN = w * wind.z;
  const aboutX = d * dead.aboutX + w * wind.aboutX;
  const aboutY = d * dead.aboutY + w * wind.aboutY;
  const halfX = (base.x1 - base.x0) / 2;
  const halfY = (base.y1 - base.y0) / 2;
  // Moments about the middle of the base: uplift at the middle turns about an edge with the half width.
  const edges = [
    { edge: "+x", weightN, leverMm: halfX, momentNmm: aboutY + upliftN * halfX },
    { edge: "-x", weightN, leverMm: halfX, momentNmm: -aboutY + upliftN * halfX },
    { edge: "+y", weightN, leverMm: halfY, momentNmm: -aboutX + upliftN * halfY },
    { edge: "-y", weightN, leverMm: halfY, momentNmm: aboutX + upliftN * halfY },
  ];
  const horizontalN = w * Math.sqrt(wind.x * wind.x + wind.y * wind.y);
  return { edges, slid: { weightN, upliftN, horizontalN, friction, seismic: false } };
}

const MODES = ["turns over", "slides", "lifts off"] as const;
type Mode = (typeof MODES)[number];

/** One way to lose a body; its working is written where it is the worst of its mode. */
type Tried = Omit<StabilityFinding, "working" | "body"> & {
  /** Infinite, worse than any other, for a body with no friction or no base left. */
  readonly use: number;
  readonly working: (body: string) => Working;
};

/** Of ways that are as bad as each other the first stays; hundreds of sums are tried, so only what is kept is made. */
function keepWorst(found: Map<Mode, Tried>, { edges, slid }: Sum, caseId: string, combinationId: string): void {
  const isWorst = (mode: Mode, use: number): boolean => {
    const known = found.get(mode);
    return known === undefined || use > known.use;
  };
  const keep = (mode: Mode, use: number, working: Tried["working"]): void => {
    found.set(mode, { mode, caseId, combinationId, use, working });
  };
  for (const turning of edges) {
    const use = overturningUse(turning);
    if (isWorst("turns over", use)) keep("turns over", use, (body) => overturning({ body, ...turning }));
  }
  const { weightN, upliftN } = slid;
  const slides = slidingUse(slid);
  if (isWorst("slides", slides)) keep("slides", slides, (body) => sliding({ body, ...slid }));
  const lifts = upliftUse(weightN, upliftN);
  if (isWorst("lifts off", lifts)) keep("lifts off", lifts, (body) => uplift(body, weightN, upliftN));
}

function findingOf(body: Body, tried: Tried | undefined): StabilityFinding[] {
  if (tried === undefined) return [];
  const { mode, caseId, combinationId, working } = tried;
  return [{ body, mode, caseId, combinationId, working: working(body.id) }];
}
