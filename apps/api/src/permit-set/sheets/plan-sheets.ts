import { cosDegThousandths, sinDegThousandths } from "@cornerway/engine";
import type { Derived } from "../derived.ts";
import { markedOnPlan } from "../changes.ts";
import { cloudsInk } from "../drawing/clouds.ts";
import { objectsInk } from "../drawing/objects.ts";
import { planExtent, planEye, planInk } from "../drawing/plan.ts";
import { planFrame } from "../drawing/plan-frame.ts";
import { northArrow, scaleBar, viewTitle } from "../drawing/signs.ts";
import type { Sheet } from "../figure.ts";
import { fact, fittedColumn, heading, prose, shortList, type ColumnItem } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import { fitView } from "../paper/view.ts";
import type { SetSource } from "../set-source.ts";
import { written } from "../written.ts";

/** One plan for each level, cut 1.2 m above it. */
export function planSheets(source: SetSource, derived: Derived): Sheet[] {
  return derived.plans.map((plan, at) => {
    const { units, scheme } = source;
    const storey = derived.storeys[at];
    const name = `Plan, ${(storey?.name ?? "").toLowerCase()} level`;
    const room = sheetRoom(source);
    const extent = planExtent(plan);
    const inner = {
      x: room.field.x + 60,
      y: room.field.y + 50,
      width: room.field.width - 130,
      height: room.field.height - 150,
    };
    const view = fitView(extent, inner, units);
    const foot = room.field.y + room.field.height - 22;
    const turn = { cos: cosDegThousandths(scheme.site.northMdeg), sin: sinDegThousandths(scheme.site.northMdeg) };
    const spec = { number: `S1.${at + 1}`, title: name, chapter: "Plans", scale: view.scale.name };
    const page = drawingSheet(source, spec, [
      {
        role: "Figure",
        alt: `${name}, ${plan.units.length} containers`,
        inks: [
          ...planFrame(derived.grid, view, extent, units),
          ...planInk(plan, view),
          ...objectsInk(plan.objects, planEye(view)),
          ...cloudsInk(source, storey === undefined ? [] : markedOnPlan(source, storey.index), view),
          ...northArrow({ x: room.field.x + room.field.width - 24, y: room.field.y + 34 }, turn.cos, turn.sin),
        ],
      },
      {
        role: "Figure",
        alt: `${name}: title, scale and scale bar`,
        inks: [
          ...viewTitle(
            { x: room.field.x, y: foot },
            1,
            name,
            `${view.scale.name} · cut at ${written[units].level(plan.cutMm)}`,
          ),
          ...scaleBar({ x: room.field.x + 300, y: foot - 1 }, view, units),
        ],
      },
      ...fittedColumn(columnOf(source, derived, at), room.column, "The rest is in the schedules, S6."),
    ]);
    return { page, figures: [] };
  });
}

function columnOf(source: SetSource, derived: Derived, at: number): ColumnItem[] {
  const plan = derived.plans[at];
  const storey = derived.storeys[at];
  if (plan === undefined || storey === undefined) return [];
  const say = written[source.units];
  const types = plan.units.map(({ container }) => `${container.tag} ${container.type}`);
  const openings = source.scheme.openings.filter(({ containerId }) => storey.containerIds.includes(containerId));
  return [
    heading("This level"),
    fact("Level", `${say.level(storey.levelMm)} ${say.lengthUnit} above site datum`),
    fact("Containers", shortList(types)),
    fact("Openings", openings.length === 0 ? "none" : shortList(openings.map(({ tag }) => tag))),
    fact(
      "Overhead",
      plan.overhead.length === 0
        ? "nothing off these containers"
        : shortList(plan.overhead.map(({ container }) => container.tag)),
    ),
    heading("How to read it"),
    prose(
      "A cut wall is the folded sheet itself, its pitch true, its depth drawn fuller than true. Container posts are solid. What is overhead is dash-dot, what is under the floor dashed.",
    ),
    prose(
      "Grid numbers run west to east, letters north to south, through the outer faces of the containers. Dimensions are to these faces.",
    ),
    prose(`Container types are by ISO 668. Lengths in ${say.lengthUnit}.`),
  ];
}
