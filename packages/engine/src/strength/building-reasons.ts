import type { Scheme } from "@cornerway/schema";
import type { Structure } from "../bearing/structure.ts";
import { simplifiedPath, type SingleUnitFacts } from "../codes/containers/simplified-path.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { SeismicLoading } from "../loads/seismic-cases.ts";
import type { SeismicCategory } from "../loads/seismic-site.ts";
import type { SiteActions } from "../loads/site-actions.ts";
import type { ModelNote } from "../model/build-model.ts";
import type { Axis } from "../loads/wind-shape.ts";
import type { StrengthReason } from "./strength-reason.ts";

/** What leaves every unit of the building to the engineer. */
export function buildingReasons(
  { site }: Extract<SiteActions, { accepted: true }>,
  scheme: Scheme,
  { structure }: Analysis,
): StrengthReason[] {
  const { rule } = scheme.basis.sheetWalls;
  const walls: StrengthReason[] = rule === "left out" ? [{ kind: "sheet walls otherwise", rule }] : [];
  if (site === undefined) return walls;
  const { wind, seismic } = site;
  const failed = wind.limits.filter(({ holds }) => !holds).map(({ code }) => code);
  return [
    ...walls,
    ...(failed.length > 0 ? [{ kind: "wind outside its limits", limits: failed } as const] : []),
    ...(["x", "y"] as const).flatMap((axis): StrengthReason[] =>
      seismic.axes[axis].permit.permitted
        ? systemReasons(axis, scheme, structure, seismic.design.category)
        : [{ kind: "seismic system refused", axis }],
    ),
    ...irregularReasons(seismic),
  ];
}

/** Category A asks for no system of its own; overstrength below walls that stop is run. */
function irregularReasons({ design, irregularities }: SeismicLoading): StrengthReason[] {
  if (design.category === "A") return [];
  return irregularities
    .filter(({ consequence }) => consequence === "not permitted")
    .map((irregularity) => ({ kind: "irregular", irregularity }));
}

function systemReasons(axis: Axis, scheme: Scheme, structure: Structure, category: SeismicCategory): StrengthReason[] {
  const system = scheme.basis.systems[axis];
  if (system === "container sheet walls") return [];
  if (system !== "single unit by the simplified path") return [{ kind: "seismic system not drawn", axis }];
  const fails = simplifiedPath(singleUnit(structure, category), scheme.site.edition)
    .filter(({ holds }) => !holds)
    .map(({ condition }) => condition);
  return fails.length === 0 ? [] : [{ kind: "simplified path closed", axis, fails }];
}

function singleUnit({ building, fabric }: Structure, category: SeismicCategory): SingleUnitFacts {
  const [unit] = building.units;
  return {
    units: building.units.length,
    onFoundation: building.pads.length > 0,
    touchesOrSupportsAnother: building.units.length > 1 || building.posts.length + building.beams.length > 0,
    membersCut: building.units.some(({ id }) => fabric(id).cuts.some(({ members }) => members.length > 0)),
    level: true,
    floorAtBottom: unit !== undefined,
    seismicCategory: category,
  };
}

/** What the model leaves out of one unit. */
export function modelReasons(unitId: string, notes: readonly ModelNote[], { openings }: Scheme): StrengthReason[] {
  const unitOf = new Map(openings.map(({ id, containerId }) => [id, containerId]));
  return notes
    .filter((note) => ("unitId" in note ? note.unitId : unitOf.get(note.openingId)) === unitId)
    .map((note) => ({ kind: "left out of the model", note }));
}
