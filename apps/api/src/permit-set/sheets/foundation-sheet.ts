import { assess, project } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { markedOnFoundation } from "../changes.ts";
import type { Derived } from "../derived.ts";
import { cloudsInk } from "../drawing/clouds.ts";
import { concrete } from "../drawing/hatch.ts";
import { outlineD, padCorners, padD, planExtent } from "../drawing/plan.ts";
import { planFrame } from "../drawing/plan-frame.ts";
import { hexTag, label, scaleBar, viewTitle } from "../drawing/signs.ts";
import type { Figure, Sheet } from "../figure.ts";
import { heading, layColumn, prose } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import type { Block, Ink } from "../paper/ink.ts";
import { byTag } from "../paper/by-tag.ts";
import { path, type Box } from "../paper/shapes.ts";
import { tablePart, type Table } from "../paper/table.ts";
import { fitView, type View } from "../paper/view.ts";
import type { SetSource } from "../set-source.ts";
import { caseCells, caseHeadings, supportsInOrder } from "../calculations/case-reactions.ts";
import { gravityKn, type Solved } from "../solved.ts";
import { written, type Written } from "../written.ts";

/** One line for each support, kN: what comes down with imposed load everywhere (as recorded) and by dead load alone. */
export type Reaction = { id: string; deadKn: number; allKn: number };

/** Supports with their reactions, those of the ground itself last. */
export function reactionsOf({ scheme, assessment }: SetSource): Reaction[] {
  const all = byElement(assessment.statics.reactions);
  const dead = byElement(assess(withoutImposed(scheme)).statics.reactions);
  return [...all].map(([id, allKn]) => ({ id, allKn, deadKn: dead.get(id) ?? 0 }));
}

function byElement(reactions: readonly { elementId: string; forceKn: number }[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const { elementId, forceKn } of reactions) sums.set(elementId, (sums.get(elementId) ?? 0) + forceKn);
  return sums;
}

/** The same building with nobody and nothing in it. */
const withoutImposed = (scheme: Scheme): Scheme => ({
  ...scheme,
  uses: [],
  loads: scheme.loads.filter((load) => load.case !== "imposed"),
  freeLoads: scheme.freeLoads.filter((load) => load.case === "finish" || load.case === "plant"),
});

/** Pads with their sizes and what comes down on each, set out from the grid. */
export function foundationSheet(source: SetSource, derived: Derived, solved: Solved | null): Sheet {
  const { field } = sheetRoom(source);
  const { units, scheme } = source;
  const say = written[units];
  const plan = derived.plans[0];
  const lowest = derived.storeys[0];
  const number = "S7";
  const extent = plan === undefined ? { u0: 0, u1: 1000, v0: 0, v1: 1000 } : planExtent(plan);
  const inner = { x: field.x + 60, y: field.y + 50, width: field.width - 130, height: field.height - 150 };
  const view = fitView(extent, inner, units);
  const foot = field.y + field.height - 22;
  const downKn = downOnPads(source, derived, solved);
  const page = drawingSheet(
    source,
    { number, title: "Foundation plan", chapter: "Foundations", scale: view.scale.name },
    [
      {
        role: "Figure",
        alt: `Foundation plan with ${scheme.pads.length} pads and their reactions`,
        inks: [
          ...planFrame(derived.grid, view, extent, units),
          ...(plan?.units ?? []).map((unit) =>
            path(outlineD(unit, view), { pen: "fine", dash: "hidden", tone: "graphite" }),
          ),
          ...scheme.pads.flatMap((pad, at) => padInk(pad, at, view, downKn.get(pad.id), say.force)),
          ...cloudsInk(source, lowest === undefined ? [] : markedOnFoundation(source, lowest.index), view),
        ],
      },
      {
        role: "Figure",
        alt: "Foundation plan: title, scale and scale bar",
        inks: [
          ...viewTitle(
            { x: field.x, y: foot },
            1,
            "Foundation plan",
            `${view.scale.name} · ${solved === null ? "D + L by statics" : "D + L + Lr as solved"} beside each pad, ${say.forceUnit}`,
            260,
          ),
          ...scaleBar({ x: field.x + 310, y: foot - 1 }, view, units),
        ],
      },
      ...columnBlocks(source, derived, solved),
    ],
  );
  return { page, figures: figuresOf(source, downKn, number) };
}

/** What comes down on each pad, kN, as the plan writes it beside it: as solved, or by statics where nothing was solved. */
function downOnPads(source: SetSource, derived: Derived, solved: Solved | null): ReadonlyMap<string, number> {
  return solved === null
    ? new Map(reactionsOf(source).map(({ id, allKn }) => [id, allKn]))
    : new Map(supportsInOrder(solved, derived).map((support) => [support.id, gravityKn(support)]));
}

/** The right column: on what ground, the pads with their reactions, and what else acts on them. */
function columnBlocks(source: SetSource, derived: Derived, solved: Solved | null): Block[] {
  const { column } = sheetRoom(source);
  const { scheme, units } = source;
  const say = written[units];
  const head = layColumn(
    [
      heading("Reactions"),
      prose(
        solved === null
          ? `Unfactored, ${say.forceUnit}, by statics. D is what stands there, D + L the recorded total with imposed load everywhere. Wind, snow and earthquake reactions have not been worked out for this set.`
          : `Unfactored, ${say.forceUnit}, as solved: D dead load at its heaviest, L every floor loaded, Lr every roof. By statics they are otherwise; the calculations give both, under “Reactions”, and say why.`,
      ),
      prose(
        scheme.basis.soil.report === undefined
          ? `Ground: ${scheme.basis.soil.class}, presumptive. No soil report is laid in.`
          : `Ground: ${say.pressure(scheme.basis.soil.report.bearingPa)} allowed, ${scheme.basis.soil.report.source}.`,
      ),
    ],
    column,
  );
  const table = solved === null ? staticsTable(source, say) : solvedTable(source, derived, solved, say);
  const footY = column.y + column.height;
  const part = tablePart(table, 0, column.x, head.y + 6, column.width, footY - head.y - 10);
  const below = { ...column, y: head.y + part.height + 18 };
  return [
    ...head.blocks,
    part.block,
    ...(part.rows < table.rows.length
      ? layColumn([prose("The other pads are in the calculations, under “Reactions”.")], { ...below, y: below.y - 10 })
          .blocks
      : casesBelow(solved, derived, below, footY, say)),
  ];
}

const sizeOf = (pad: Scheme["pads"][number], say: Written): string =>
  `${say.length(pad.lengthUm / 1000)} × ${say.length(pad.widthUm / 1000)}`;

const padColumns = (names: readonly string[]) => [
  { heading: "Pad", share: 5 },
  { heading: "Size", share: 10 },
  ...names.map((name) => ({ heading: name, share: 6, right: true })),
];

function staticsTable(source: SetSource, say: Written): Table {
  const reactions = new Map(reactionsOf(source).map((each) => [each.id, each]));
  const rows = byTag(source.scheme.pads).map((pad) => {
    const found = reactions.get(pad.id);
    const kn = found === undefined ? ["none", "none"] : [say.force(found.deadKn), say.force(found.allKn)];
    return [pad.tag, sizeOf(pad, say), ...kn];
  });
  return { name: "Reactions at the pads", rows, size: 7.6, columns: padColumns(["D", "D + L"]) };
}

function solvedTable({ scheme }: SetSource, derived: Derived, solved: Solved, say: Written): Table {
  const supports = new Map(supportsInOrder(solved, derived).map((support) => [support.id, support]));
  const rows = byTag(scheme.pads).map((pad) => {
    const found = supports.get(pad.id);
    const kn =
      found === undefined
        ? ["none", "", "", ""]
        : [found.dead ?? 0, found.imposed ?? 0, found.roof ?? 0, gravityKn(found)].map(say.force);
    return [pad.tag, sizeOf(pad, say), ...kn];
  });
  return { name: "Reactions at the pads", rows, size: 7.4, columns: padColumns(["D", "L", "Lr", "D + L + Lr"]) };
}

/** Cases that come and go, after dead, imposed and roof load. */
const passing = 3;

/** Snow, wind and earthquake under the others, as far as there is room; the calculations tell all of them. */
function casesBelow(solved: Solved | null, derived: Derived, at: Box, footY: number, say: Written): Block[] {
  if (solved === null) return [];
  const rows = supportsInOrder(solved, derived).map((support) => [
    derived.tag(support.id),
    ...caseCells(support, say.force).slice(passing),
  ]);
  if (rows.every((cells) => cells.slice(1).every((words) => words === "–")))
    return layColumn(
      [
        heading("Snow, wind, earthquake"),
        prose(
          "None of them is worked out for this set: no values of the site are entered. No pad is shown to hold under them.",
        ),
      ],
      at,
    ).blocks;
  const words = `By case, as solved, unfactored, ${say.forceUnit}; a minus is a pull. Sideways forces are in the calculations.`;
  const title = layColumn([heading("Snow, wind, earthquake"), prose(words)], at);
  const table = {
    ...{ name: "Reactions by case at the pads", rows, size: 7 },
    columns: [
      { heading: "Pad", share: 6 },
      ...caseHeadings.slice(passing).map((name) => ({ heading: name, share: 7, right: true })),
    ],
  };
  const part = tablePart(table, 0, at.x, title.y + 4, at.width, footY - title.y - 30);
  const rest = "The other pads are in the calculations, under “Reactions by case, as solved”.";
  return [
    ...title.blocks,
    part.block,
    ...(part.rows < rows.length ? layColumn([prose(rest)], { ...at, y: title.y + 6 + part.height }).blocks : []),
  ];
}

function padInk(
  pad: Scheme["pads"][number],
  at: number,
  view: View,
  downKn: number | undefined,
  force: (kn: number) => string,
): Ink[] {
  const spot = view.toPaper({ uMm: pad.xUm / 1000, vMm: pad.yUm / 1000 });
  const half = view.length(Math.min(pad.lengthUm, pad.widthUm) / 2000) * 0.7;
  const { dots, triangles } = concrete(
    { x: spot.x - half, y: spot.y - half, width: 2 * half, height: 2 * half },
    at + 1,
  );
  return [
    path(padD(pad, view), { pen: "profile", fill: "paper" }),
    path(dots, { pen: "edge", tone: "graphite" }),
    path(triangles, { pen: "hair", tone: "graphite" }),
    ...hexTag({ x: spot.x, y: spot.y }, pad.tag),
    ...(downKn === undefined ? [] : label({ x: spot.x, y: spot.y + half / 0.7 + 10 }, force(downKn), { strong: true })),
  ];
}

/** Sides as the inked corners lie apart. */
function figuresOf({ scheme }: SetSource, downKn: ReadonlyMap<string, number>, page: string): Figure[] {
  const from = "drawing" as const;
  return scheme.pads.flatMap((pad): Figure[] => {
    const [a, b, , d] = padCorners(pad).map((at) => project("plan", at));
    if (a === undefined || b === undefined || d === undefined) return [];
    const apart = (one: typeof a, two: typeof a) => Math.sqrt((one.uMm - two.uMm) ** 2 + (one.vMm - two.vMm) ** 2);
    const found = downKn.get(pad.id);
    return [
      { about: pad.tag, quantity: "pad length", value: apart(a, b), from, page },
      { about: pad.tag, quantity: "pad width", value: apart(a, d), from, page },
      ...(found === undefined ? [] : [{ about: pad.tag, quantity: "reaction, kN", value: found, from, page }]),
    ];
  });
}
