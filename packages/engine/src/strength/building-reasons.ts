import type { Scheme } from "@cornerway/schema";
import type { SiteActions } from "../loads/site-actions.ts";
import type { ModelNote } from "../model/build-model.ts";
import type { StrengthReason } from "./strength-reason.ts";

/** What leaves every unit of the building to the engineer. */
export function buildingReasons(
  { site }: Extract<SiteActions, { accepted: true }>,
  { sheetWalls: { rule } }: Pick<Scheme["basis"], "sheetWalls">,
): StrengthReason[] {
  const walls: StrengthReason[] = rule === "counted" ? [] : [{ kind: "sheet walls otherwise", rule }];
  if (site === undefined) return walls;
  const { wind, seismic } = site;
  const failed = wind.limits.filter(({ holds }) => !holds).map(({ code }) => code);
  return [
    ...walls,
    ...(failed.length > 0 ? [{ kind: "wind outside its limits", limits: failed } as const] : []),
    ...(["x", "y"] as const).flatMap((axis): StrengthReason[] =>
      seismic.axes[axis].permit.permitted ? [] : [{ kind: "seismic system refused", axis }],
    ),
  ];
}

/** What the model leaves out of one unit. */
export function modelReasons(unitId: string, notes: readonly ModelNote[], { openings }: Scheme): StrengthReason[] {
  const unitOf = new Map(openings.map(({ id, containerId }) => [id, containerId]));
  return notes
    .filter((note) => ("unitId" in note ? note.unitId : unitOf.get(note.openingId)) === unitId)
    .map((note) => ({ kind: "left out of the model", note }));
}
