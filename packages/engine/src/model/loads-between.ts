import type { Building } from "../geometry/building.ts";
import type { ActionCase, ActionLoad } from "../loads/action-case.ts";
import type { ModelCase } from "./analytical-model.ts";
import { postAt, type BearingPlan } from "./bearing-plan.ts";
import { nodeName } from "./building-model.ts";
import { beamLines } from "./draw-beams.ts";
import { nameAbove, type BearingPlaces } from "./model-bearings.ts";

type Movement = Extract<ActionLoad, { readonly kind: "movement" }>;
type PointLoad = Extract<ActionLoad, { readonly kind: "point" }>;
type Plan = Pick<BearingPlan, "bearings" | "freePosts" | "beams" | "inWalls">;

/**
 * Loads on what lies between the containers: movements of pads and of posts on them, down positive in the action, at every
 * support that stands so; forces on posts by themselves, at their heads; forces on beams, which are those of their own mass,
 * evenly along them.
 */
export function loadsBetween(
  actions: readonly ActionCase[],
  plan: Plan,
  places: BearingPlaces & { readonly building: Pick<Building, "beamById"> },
): Record<string, ModelCase> {
  const isSteelBetween = plan.freePosts.length + plan.beams.length > 0;
  const cases = actions.map(({ id, loads }): [string, ModelCase] => {
    const points = isSteelBetween ? loads.filter((load) => load.kind === "point") : [];
    const settle = loads.flatMap((load) => (load.kind === "movement" ? movedBy(load, plan, places) : []));
    const nodal = points.flatMap((load) => (plan.freePosts.includes(load.elementId) ? [onPost(load)] : []));
    const beam_udl = points.flatMap((load) => (plan.beams.includes(load.elementId) ? along(load, plan, places) : []));
    return [
      id,
      {
        ...(settle.length > 0 && { settle }),
        ...(nodal.length > 0 && { nodal }),
        ...(beam_udl.length > 0 && { beam_udl }),
      },
    ];
  });
  return Object.fromEntries(cases);
}

function movedBy(
  { elementId, downMm }: Movement,
  { bearings, inWalls }: Plan,
  places: BearingPlaces,
): NonNullable<ModelCase["settle"]>[number][] {
  return bearings
    .filter(
      ({ above, below }) => "ground" in below && (below.ground === elementId || postAt(above, inWalls) === elementId),
    )
    .map(({ above }) => ({ node: nameAbove(above, places), dof: "uz" as const, value: -downMm }));
}

const onPost = ({ elementId, xN, yN, zN }: PointLoad): NonNullable<ModelCase["nodal"]>[number] => ({
  node: nodeName(elementId, "head"),
  F: [xN, yN, zN, 0, 0, 0],
});

function along(
  { elementId, xN, yN, zN }: PointLoad,
  { bearings }: Plan,
  { building }: BearingPlaces,
): NonNullable<ModelCase["beam_udl"]>[number][] {
  const beam = building.beamById.get(elementId);
  if (beam === undefined) return [];
  const { lengthMm } = beam;
  return beamLines(beam, bearings).map(({ id }) => ({
    beam: id,
    q: [xN / lengthMm, yN / lengthMm, zN / lengthMm],
  }));
}
