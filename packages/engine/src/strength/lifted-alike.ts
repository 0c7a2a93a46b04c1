import type { Container, Pad, Scheme } from "@cornerway/schema";
import { placeContainer } from "../geometry/place.ts";
import { RecentlyMade } from "../numerics/recently-made.ts";
import type { ElementResult } from "./element-result.ts";
import type { StrengthBasis } from "./strength-basis.ts";

type Hung = (alone: Scheme, hanging: Container) => readonly ElementResult[];

/**
 * What hangs on nothing but the container itself, its cuts and its measured steel: found once for all that are alike, each taken by
 * itself at the origin under one name, so that the answer is the same to the bit wherever and beside whatever it stands.
 * `memory`: whoever solves with it shares what was found.
 */
export function liftedAlike(
  scheme: Scheme,
  container: Container,
  basis: StrengthBasis,
  memory: object,
  find: Hung,
): ElementResult[] {
  const hanging: Container = { ...container, id: HANGING, ...{ tag: "", xUm: 0, yUm: 0, zUm: 0, turnMdeg: 0 } };
  const alone = unitAlone(scheme, container.id, { ...hanging, doors: "welded shut" });
  const results = madeWith(memory, basis).take(JSON.stringify(alone), () => find(alone, hanging));
  return results.map((result) => ofContainer(result, container.id));
}

/** The name it hangs under; names of parts and runs begin with or hold it, and no word of theirs does. */
const HANGING = "(hanging)";

function ofContainer(result: ElementResult, id: string): ElementResult {
  const named = (text: string): string => text.replaceAll(HANGING, id);
  return {
    ...result,
    id: named(result.id),
    ownerId: id,
    governingRun: named(result.governingRun),
    held: result.held.map(named),
  };
}

/**
 * One container with what is cut in it before the pick, on pads that its loads will leave empty. Its doors hang shut and barred
 * in the pick unless the door end is cut: so the ISO test racks them with 150 kN, and so they stand in the model.
 */
function unitAlone(scheme: Scheme, id: string, hanging: Container): Scheme {
  const { bottomFittings } = placeContainer(hanging);
  const corners = bottomFittings.filter(({ name }) => !name.endsWith("inner"));
  const own = scheme.openings.filter(({ containerId, cut }) => containerId === id && cut === undefined);
  const measured = scheme.overrides.filter(({ elementId }) => elementId === id);
  return {
    ...scheme,
    site: { ...scheme.site, groundZUm: 0 },
    containers: [hanging],
    openings: own.map((opening) => ({ ...opening, containerId: HANGING })),
    overrides: measured.map((override) => ({ ...override, elementId: HANGING })),
    pads: corners.map(({ name, at }): Pad => ({
      id: `lift-${name}`,
      tag: "L",
      xUm: Math.round(at.xMm * 1000),
      yUm: Math.round(at.yMm * 1000),
      topZUm: 0,
      lengthUm: 500_000,
      widthUm: 500_000,
      depthUm: 100_000,
      turnMdeg: 0,
    })),
    ...{ posts: [], beams: [], seats: [], ties: [], locks: [], loads: [], freeLoads: [], uses: [] },
  };
}

function madeWith(memory: object, basis: StrengthBasis): RecentlyMade<readonly ElementResult[]> {
  const byBasis = found.get(memory) ?? new WeakMap<StrengthBasis, RecentlyMade<readonly ElementResult[]>>();
  found.set(memory, byBasis);
  const known = byBasis.get(basis) ?? new RecentlyMade<readonly ElementResult[]>(KEPT);
  byBasis.set(basis, known);
  return known;
}

const found = new WeakMap<object, WeakMap<StrengthBasis, RecentlyMade<readonly ElementResult[]>>>();
/** Of so many containers that differ. */
const KEPT = 64;
