import { detailsOf, type Detail } from "@cornerway/engine";
import { digestOf } from "@cornerway/schema";
import { detailExtent, detailInk } from "../drawing/detail.ts";
import { viewTitle } from "../drawing/signs.ts";
import type { Sheet } from "../figure.ts";
import { byTag } from "../paper/by-tag.ts";
import { fittedColumn, heading, prose, shortList } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import type { Block } from "../paper/ink.ts";
import type { Box } from "../paper/shapes.ts";
import { fitView } from "../paper/view.ts";
import { capital } from "../paper/words.ts";
import type { SetSource } from "../set-source.ts";

/** A cut that is the same at every element named: drawn once. */
type Typical = { detail: Detail; tags: readonly string[]; assumed: boolean };

const columns = 3;
const rows = 3;

/** Cuts through frames of openings, ends of posts, seats, ties, locks and pads, each kind once, with plates, welds and anchors. */
export function detailSheets(source: SetSource): Sheet[] {
  const all = typicalDetails(source);
  const perSheet = columns * rows;
  return Array.from({ length: Math.ceil(all.length / perSheet) }, (_, at) =>
    detailSheet(source, all.slice(at * perSheet, (at + 1) * perSheet), at),
  );
}

function typicalDetails({ scheme }: SetSource): Typical[] {
  const found = new Map<string, { detail: Detail; tags: string[]; assumed: boolean }>();
  const elements = [
    ...byTag(scheme.openings).map(({ id, tag, framing }) => ({ id, tag, assumed: framing === undefined })),
    ...[scheme.posts, scheme.seats, scheme.ties, scheme.locks, scheme.pads]
      .flatMap((each) => byTag<{ id: string; tag: string }>(each))
      .map(({ id, tag }) => ({
        ...{ id, tag, assumed: false },
      })),
  ];
  for (const { id, tag, assumed } of elements)
    for (const detail of detailsOf(scheme, id)) {
      const key = digestOf({ ...unnamed(detail), assumed });
      const known = found.get(key);
      if (known === undefined) found.set(key, { detail: unnamed(detail), tags: [tag], assumed });
      else known.tags.push(tag);
    }
  return [...found.values()];
}

/** Without the tag of its element, and of the pad it stands on: the same cut elsewhere is the same detail. */
const unnamed = (detail: Detail): Detail => ({
  ...detail,
  tag: "",
  parts: detail.parts.map((part) => ({
    ...part,
    name: part.what === "concrete" ? "concrete pad" : part.name === detail.tag ? "plate, packing" : part.name,
  })),
});

function detailSheet(source: SetSource, details: readonly Typical[], sheet: number): Sheet {
  const { field, column } = sheetRoom(source);
  const number = `S9.${sheet + 1}`;
  const page = drawingSheet(source, { number, title: "Details", chapter: "Details", scale: "as noted" }, [
    ...details.map((each, at) => detailBlock(source, each, at, field)),
    ...fittedColumn(
      [
        heading("Details"),
        prose(
          "Each is a cut through the place named, from the same data that is checked, and stands for every element under its title. Added steel is hatched in pairs, the container's own steel close; plates, and walls too thin for a hatch, are solid.",
        ),
        prose(
          "Welds are fillets, their leg before the sign and their length after it, all round where the knee has a circle (AWS A2.4 and ISO 2553, from memory). A plate or anchor called stated, and a frame called assumed, is what the strength run was made with; the engineer confirms or replaces it. What is dashed is shown where it goes and not in its shape.",
        ),
        prose("Every lock, tie and made connection is in the schedules, S6; what joins them is the engineer's."),
      ],
      column,
      "The rest is in the schedules, S6.",
    ),
  ]);
  return { page, figures: [] };
}

function detailBlock({ units }: SetSource, { detail, tags, assumed }: Typical, at: number, field: Box): Block {
  const [width, height] = [field.width / columns, field.height / rows];
  const cell = { x: field.x + (at % columns) * width, y: field.y + Math.floor(at / columns) * height };
  const room = { x: cell.x + 34, y: cell.y + 26, width: width - 34 - 100, height: height - 26 - 58 };
  const view = fitView(detailExtent(detail), room, units);
  const foot = { x: cell.x, y: cell.y + height - 24 };
  const name = `${capital(detail.subject)}${assumed ? ", frame assumed" : ""}`;
  return {
    role: "Figure",
    alt: `${name}, at ${tags.join(", ")}: ${[...new Set(detail.parts.map((part) => part.name))].join(", ")}`,
    inks: [
      ...detailInk(detail, view, units),
      ...viewTitle(foot, at + 1, name, `${view.scale.name} · ${shortList(tags, 9)}`, width - 16),
    ],
  };
}
