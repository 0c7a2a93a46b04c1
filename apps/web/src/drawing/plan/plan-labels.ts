import type { PlanModel, PlanUnit } from "@cornerway/engine";
import type { UnitSystem, Verdict } from "@cornerway/schema";
import { ink, verdictInk } from "../../look/ink.ts";
import { placeLabels, type BoxPx, type Label, type Placed, type Spot } from "../label/place-labels.ts";
import type { DimensionStrings } from "../dimension/strings.ts";
import type { ElementVerdict } from "../marks/element-verdicts.ts";
import { objectBoxes, objectLabels } from "../objects/object-labels.ts";
import { planEye } from "../objects/object-eye.ts";
import { toScreen, type ViewPoint, type ViewTransform } from "../view-transform.ts";

type Lettered = Label & { colour: string; fontWeight: number };
export type PlanLabel = Placed<Lettered>;
/** The strings of a plan, where a layer inks on it, and what it letters there. */
export type PlanLayered = {
  strings: DimensionStrings;
  inked?: readonly BoxPx[] | undefined;
  figures?: readonly Lettered[] | undefined;
  /** The circles of the grid: nothing is lettered over them. */
  circles?: readonly BoxPx[] | undefined;
};

/** Names in a plan: each unit in its room, each unit overhead where it is free. */
export function planLabels(
  model: PlanModel,
  view: ViewTransform,
  verdicts: ReadonlyMap<string, ElementVerdict>,
  units: UnitSystem,
  { strings, inked = [], figures = [], circles = [] }: PlanLayered,
): PlanLabel[] {
  const rooms = model.units.map((unit) =>
    label(`room-${unit.container.id}`, unit.container.tag, unit, view, ink.ink, 13, 600),
  );
  const over = model.overhead.map((unit) =>
    label(
      `over-${unit.container.id}`,
      `${unit.container.tag} over`,
      unit,
      view,
      overheadInk(verdicts.get(unit.container.id)?.verdict),
      11,
      500,
    ),
  );
  const below = model.below.map((unit) =>
    label(`below-${unit.container.id}`, `${unit.container.tag} below`, unit, view, ink.graphite, 11, 400),
  );
  const walls = model.units.flatMap((unit) => edgeBoxes(unit, view));
  const above = model.overhead.flatMap((unit) => edgeBoxes(unit, view));
  const kept = below
    .filter(({ spots }) => spots.length > 0)
    .map((each) => ({ ...each, spots: each.spots.filter((spot) => !inAnyUnit(spot, model, view)) }));
  return placeLabels(
    [
      ...strings.labels,
      ...over,
      ...rooms,
      ...objectLabels(model.objects, planEye(view), units),
      ...kept.filter(({ spots }) => spots.length > 0),
      ...figures,
    ],
    [...walls, ...above, ...objectBoxes(model.objects, planEye(view), units), ...inked],
    circles,
  );
}

/** An overhead unit is drawn in the colour of its verdict, so that what crosses here is found at once. */
export const overheadInk = (verdict: Verdict | undefined): string =>
  verdict === undefined || verdict === "works as built" ? ink.graphite : verdictInk[verdict];

function label(
  key: string,
  text: string,
  unit: PlanUnit,
  view: ViewTransform,
  colour: string,
  sizePx: number,
  fontWeight: number,
): Lettered {
  return { key, of: unit.container.id, text, sizePx, colour, fontWeight, spots: spotsIn(unit, view) };
}

/** Off the very middle first: there the leader of a note on the unit ends. */
const shares = [0.37, 0.63, 0.3, 0.7, 0.2, 0.8, 0.5, 0.1, 0.9];

/** Spots along a unit's middle, nearest to its centre first. */
function spotsIn({ outline }: PlanUnit, view: ViewTransform): Spot[] {
  const [a, b, c, d] = outline;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
  return shares.flatMap((share) => {
    const { xPx, yPx } = toScreen(view, between(between(a, b, share), between(d, c, share), 0.5));
    return [{ xPx, yPx: yPx + 4.5, anchor: "middle" as const }];
  });
}

const between = (a: ViewPoint, b: ViewPoint, share: number): ViewPoint => ({
  uMm: a.uMm + (b.uMm - a.uMm) * share,
  vMm: a.vMm + (b.vMm - a.vMm) * share,
});

/** Thin boxes along the edges of a unit that run level or upright on paper. */
function edgeBoxes({ outline }: PlanUnit, view: ViewTransform): BoxPx[] {
  const points = outline.map((point) => toScreen(view, point));
  return points.flatMap((from, index) => {
    const to = points[(index + 1) % points.length] ?? from;
    const upright = Math.abs(from.xPx - to.xPx) < 2;
    const levelled = Math.abs(from.yPx - to.yPx) < 2;
    if (!upright && !levelled) return [];
    return [
      {
        left: Math.min(from.xPx, to.xPx) - 2,
        right: Math.max(from.xPx, to.xPx) + 2,
        top: Math.min(from.yPx, to.yPx) - 2,
        bottom: Math.max(from.yPx, to.yPx) + 2,
      },
    ];
  });
}

const inAnyUnit = ({ xPx, yPx }: Spot, model: PlanModel, view: ViewTransform): boolean =>
  model.units.some(({ outline }) => {
    const at = outline.map((point) => toScreen(view, point));
    return (
      xPx > Math.min(...at.map((point) => point.xPx)) - 20 &&
      xPx < Math.max(...at.map((point) => point.xPx)) + 20 &&
      yPx > Math.min(...at.map((point) => point.yPx)) &&
      yPx < Math.max(...at.map((point) => point.yPx)) + 6
    );
  });
