import { changesOnElevation, changesOnPlan, elevationModel, planModel } from "@cornerway/engine";
import type { ElementChange, Pair, Scheme, Site } from "@cornerway/schema";
import { useMemo } from "react";
import type { ViewClouds } from "../../drawing/compare/cloud-layer.tsx";
import { cloudMarks, cloudRim } from "../../drawing/compare/cloud-marks.ts";
import { groundChange, northChange } from "../../drawing/compare/site-places.ts";
import { elevationLabels, tagSpots } from "../../drawing/elevation/elevation-labels.ts";
import { elevationStrings } from "../../drawing/elevation/elevation-strings.ts";
import { boxAround, type BoxPx } from "../../drawing/label/place-labels.ts";
import { orderNotes } from "../../drawing/leaders/order-notes.ts";
import { framedPlan } from "../../drawing/plan/framed-plan.ts";
import { planLabels } from "../../drawing/plan/plan-labels.ts";
import type { Side } from "../../drawing/contract.ts";
import type { ViewTransform } from "../../drawing/view-transform.ts";
import { hexagonHalfPx } from "../../look/hexagon-size.ts";
import { planStringsWithin, type LaidViews } from "../../paper/lay-views.ts";
import type { Field } from "../../paper/use-field.ts";
import type { LeaderAnchor } from "../../sheet/contract.ts";
import { useUnits } from "../../units/use-units.ts";
import type { ComparedLine } from "./compared-lines.ts";

export interface NumberedLine {
  number: number;
  line: ComparedLine;
  /** Where its leader ends, px of the sheet; null where neither view shows it. */
  anchor: LeaderAnchor | null;
}

export interface Clouded {
  numbered: readonly NumberedLine[];
  marks: ViewClouds;
}

interface CloudedGiven {
  changes: readonly ElementChange[];
  site: Pair<Site> | null;
  lines: readonly ComparedLine[];
  schemes: Pair<Scheme>;
  side: Side;
  storey: number;
  revisionLetters: readonly string[];
  views: LaidViews | null;
  field: Field | null;
}

/** Clouds on both views, and the lines numbered in the order of their height on the drawing. */
export function useClouds(given: CloudedGiven): Clouded {
  const { changes, site, lines, schemes, side, storey, revisionLetters, views, field } = given;
  const units = useUnits();
  return useMemo(() => {
    const { before, after } = schemes;
    if (views === null || field === null)
      return { numbered: numberedBy(lines, () => null, 0), marks: { elevation: [], plan: [] } };
    const [high, flat] = [views.elevation.transform, views.plan.transform];
    const model = elevationModel(after, side, revisionLetters);
    const seen = {
      elevation: [...changesOnElevation(changes, before, after, side), ...groundChange(site, model)],
      plan: views.oneView
        ? []
        : [...changesOnPlan(changes, before, after, storey), ...northChange(site, after, storey, flat)],
    };
    const unnumbered = {
      elevation: cloudMarks(seen.elevation, new Map(), high, []),
      plan: cloudMarks(seen.plan, new Map(), flat, []),
    };
    const numbered = numberedBy(lines, anchorIn(unnumbered, field), field.leftPx + field.widthPx);
    const numberOf = new Map(numbered.flatMap(({ number, line }) => line.ids.map((id) => [id, number] as const)));
    const rims = { elevation: unnumbered.elevation.flatMap(cloudRim), plan: unnumbered.plan.flatMap(cloudRim) };
    const names = elevationLabels(model, high, [], units, {
      strings: elevationStrings(model, high, units),
      inked: rims.elevation,
    }).map(({ box }) => box);
    const cut = planModel(after, storey);
    const { strings } = framedPlan(cut, {
      ...{ scheme: after, view: flat, revisionLetters, units },
      stringsWithin: planStringsWithin(views.plan.rect),
    });
    const rooms = planLabels(cut, flat, new Map(), units, { strings, inked: rims.plan }).map(({ box }) => box);
    return {
      numbered,
      marks: {
        elevation: cloudMarks(seen.elevation, numberOf, high, [...names, ...tagBoxes(model, high)]),
        plan: cloudMarks(seen.plan, numberOf, flat, rooms),
      },
    };
  }, [changes, site, lines, schemes, side, storey, revisionLetters, views, field, units]);
}

const tagBoxes = (model: ReturnType<typeof elevationModel>, view: ViewTransform): BoxPx[] =>
  tagSpots(model, view).map(({ xPx, yPx }) =>
    boxAround(xPx, yPx, hexagonHalfPx.widthPx + 1, hexagonHalfPx.heightPx + 1),
  );

type AnchorOf = (line: ComparedLine) => LeaderAnchor | null;

function numberedBy(lines: readonly ComparedLine[], anchorOf: AnchorOf, marginXPx: number): NumberedLine[] {
  const placed = lines.map((line) => ({ line, anchor: anchorOf(line) }));
  const margin = { xPx: marginXPx, topPx: 90, footPx: 620 };
  return orderNotes(placed, margin).map((each, at) => ({ ...each, number: at + 1 }));
}

/** The right edge of the first cloud of a line: on the elevation, else on the plan. */
const anchorIn =
  ({ elevation, plan }: ViewClouds, field: Field): AnchorOf =>
  ({ ids }) => {
    const mark = [...elevation, ...plan].find((each) => each.ids.some((id) => ids.includes(id)));
    if (mark === undefined) return null;
    const { xPx, yPx, widthPx, heightPx } = mark.cloud;
    return { xPx: field.leftPx + xPx + widthPx + 3, yPx: field.topPx + yPx + heightPx * 0.4, end: "dot" };
  };
