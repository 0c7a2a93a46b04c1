import { hypot, openingFrame } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import type { Derived } from "../derived.ts";
import type { Figure, Sheet } from "../figure.ts";
import { heading, prose, wholeColumn } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import type { Block } from "../paper/ink.ts";
import { text } from "../paper/shapes.ts";
import { tablePart, type Table } from "../paper/table.ts";
import type { SetSource } from "../set-source.ts";
import { written, type Written } from "../written.ts";
import { byTag } from "../paper/by-tag.ts";
import { faceName } from "./cut-plan-sheets.ts";
import { postForces } from "./post-forces.ts";

type Titled = { title: string; table: Table };

/** Schedules of what is cut and what is added, over as many sheets as they need. */
export function scheduleSheets(source: SetSource, derived: Derived): Sheet[] {
  const say = written[source.units];
  const schedules = [
    openingSchedule(source, derived, say),
    postSchedule(source, say),
    beamSchedule(source.scheme, say),
    seatSchedule(source.scheme, derived, say),
    tieSchedule(source.scheme, derived, say),
    lockSchedule(source.scheme, derived),
    padSchedule(source.scheme, say),
    connectionSchedule(source, derived, say),
  ];
  const leaves = laid(source, schedules);
  return leaves.map((blocks, at) => {
    const number = `S6.${at + 1}`;
    const spec = {
      number,
      title: `Schedules${leaves.length > 1 ? `, ${at + 1} of ${leaves.length}` : ""}`,
      chapter: "Schedules",
    };
    const page = drawingSheet(source, spec, [...blocks, ...wholeColumn(notes(say), sheetRoom(source).column)]);
    return { page, figures: at === 0 ? figuresOf(source, number) : [] };
  });
}

const notes = (say: Written) => [
  heading("On these schedules"),
  prose(
    `Lengths are in ${say.lengthUnit} unless a unit is written, forces in ${say.forceUnit}, unfactored, by statics from the recorded assessment.`,
  ),
  prose(
    "Tags are those of the drawings. What a row leaves open is written as such and is to be settled before the part is made.",
  ),
  prose(
    "Welds, bolts and plates of seats, ties, made connections and hold-downs are not designed by the program where the coverage table says so: they are the engineer's.",
  ),
];

/** Schedules one under the other; a long one goes on over the next sheet. */
function laid(source: SetSource, schedules: readonly Titled[]): Block[][] {
  const { field } = sheetRoom(source);
  const sheets: Block[][] = [[]];
  let y = field.y;
  for (const { title, table } of schedules) {
    let from = 0;
    do {
      if (y + 64 > field.y + field.height) {
        sheets.push([]);
        y = field.y;
      }
      const blocks = sheets.at(-1) ?? [];
      const name = from === 0 ? title : `${title}, continued`;
      const titled = table.rows.length === 0 ? `${title}: none` : name;
      blocks.push({ role: "H2", inks: [text(field.x, y + 12, titled, { face: "prose", size: 12.5 })] });
      y += 20;
      if (table.rows.length === 0) break;
      const part = tablePart(table, from, field.x, y, field.width, field.y + field.height - y);
      blocks.push(part.block);
      y += part.height + 12;
      from += part.rows;
    } while (from < table.rows.length);
  }
  return sheets;
}

const column = (heading: string, share: number, right = false) => ({ heading, share, right });

function openingSchedule({ scheme }: SetSource, derived: Derived, say: Written): Titled {
  const rows = byTag(scheme.openings).map((opening) => {
    const placed = derived.placed.get(opening.containerId);
    return [
      opening.tag,
      derived.tag(opening.containerId),
      placed === undefined ? opening.face : faceName(placed, opening.face),
      opening.use,
      say.length(opening.widthUm / 1000),
      say.length(opening.heightUm / 1000),
      say.length(opening.offsetUm / 1000),
      say.length(opening.sillUm / 1000),
      opening.framed ? framingWords(opening) : "none",
      opening.cut ?? "in the yard",
    ];
  });
  const columns = [
    ...[column("Tag", 5), column("In", 4), column("Face", 17), column("Use", 9), column("Width", 7, true)],
    ...[column("Height", 7, true), column("From fitting", 9, true), column("Sill", 7, true)],
    ...[column("Framing", 22), column("Cut", 11)],
  ];
  return { title: "Openings", table: { name: "Schedule of openings", columns, rows, size: 7.6 } };
}

const framingWords = ({ use, framing }: Scheme["openings"][number]): string =>
  framing === undefined
    ? `${openingFrame({ use }).jamb.name} assumed, to be stated`
    : `jambs ${framing.jamb}, header ${framing.header}${framing.sill === undefined ? ", no sill" : `, sill ${framing.sill}`}`;

function postSchedule(source: SetSource, say: Written): Titled {
  const forces = postForces(source.assessment);
  const rows = byTag(source.scheme.posts).map((post) => [
    post.tag,
    post.section,
    say.length(post.xUm / 1000),
    say.length(post.yUm / 1000),
    say.level(post.baseZUm / 1000),
    say.level(post.topZUm / 1000),
    say.length((post.topZUm - post.baseZUm) / 1000),
    forces.has(post.id) ? say.force(forces.get(post.id) ?? 0) : "none comes down",
  ]);
  const columns = [
    ...[column("Tag", 5), column("Section", 20), column("x", 9, true), column("y", 9, true), column("Foot", 9, true)],
    ...[column("Head", 9, true), column("Height", 9, true), column(`Force at foot, ${say.forceUnit}`, 14, true)],
  ];
  return { title: "Posts", table: { name: "Schedule of posts", columns, rows } };
}

function beamSchedule(scheme: Scheme, say: Written): Titled {
  const spot = ({ xUm, yUm, zUm }: { xUm: number; yUm: number; zUm: number }) =>
    `${say.length(xUm / 1000)}, ${say.length(yUm / 1000)}, ${say.level(zUm / 1000)}`;
  const rows = scheme.beams.map(({ tag, section, from, to }) => [
    tag,
    section,
    spot(from),
    spot(to),
    say.length(hypot(to.xUm - from.xUm, to.yUm - from.yUm, to.zUm - from.zUm) / 1000),
  ]);
  const columns = [
    column("Tag", 5),
    column("Section", 18),
    column("From x, y, level", 22),
    column("To x, y, level", 22),
    column("Length", 9, true),
  ];
  return { title: "Beams", table: { name: "Schedule of beams", columns, rows } };
}

function seatSchedule(scheme: Scheme, { tag }: Derived, say: Written): Titled {
  const rows = scheme.seats.map((seat) => [
    seat.tag,
    `${tag(seat.upperId)} on ${tag(seat.lowerId)}`,
    say.length(seat.xUm / 1000),
    say.length(seat.yUm / 1000),
    `${say.small(seat.lengthUm / 1000)} × ${say.small(seat.widthUm / 1000)}`,
    say.small(seat.packingUm / 1000),
    seat.stiffenerUm === undefined ? "none" : say.small(seat.stiffenerUm / 1000),
    seat.heldDown ? "held down" : "bears only",
  ]);
  const columns = [
    ...[column("Tag", 5), column("Bears", 14), column("x", 9, true), column("y", 9, true)],
    ...[column("Plate", 18), column("Packing", 10, true), column("Stiffener", 10, true), column("Holds", 12)],
  ];
  return { title: "Seats", table: { name: "Schedule of seats", columns, rows } };
}

function tieSchedule(scheme: Scheme, { tag }: Derived, say: Written): Titled {
  const rows = scheme.ties.map((tie) => [
    tie.tag,
    `${tag(tie.aId)} to ${tag(tie.bId)}`,
    say.length(tie.xUm / 1000),
    say.length(tie.yUm / 1000),
    say.level(tie.zUm / 1000),
    tie.carries,
    tie.stiffnessNPerMm === undefined ? "that of the stated plate" : `${tie.stiffnessNPerMm} N/mm`,
  ]);
  const columns = [
    ...[column("Tag", 5), column("Between", 14), column("x", 9, true), column("y", 9, true), column("Level", 9, true)],
    ...[column("Carries", 16), column("Stiffness", 16)],
  ];
  return { title: "Ties", table: { name: "Schedule of ties", columns, rows } };
}

function lockSchedule(scheme: Scheme, { tag }: Derived): Titled {
  const rows = scheme.locks.map((lock) => [
    lock.tag,
    tag(lock.containerId),
    lock.fitting.replaceAll("-", " "),
    lock.kind,
    lock.tested === undefined
      ? "as the engine states"
      : `tension ${lock.tested.tensionN / 1000} kN, shear ${lock.tested.shearN / 1000} kN: ${lock.tested.source}`,
  ]);
  const columns = [
    column("Tag", 5),
    column("Under", 7),
    column("Fitting", 12),
    column("Kind", 14),
    column("Resistance", 30),
  ];
  return { title: "Locks, made connections and hold-downs", table: { name: "Schedule of locks", columns, rows } };
}

function padSchedule(scheme: Scheme, say: Written): Titled {
  const rows = byTag(scheme.pads).map((pad) => [
    pad.tag,
    pad.support ?? "pad",
    say.length(pad.xUm / 1000),
    say.length(pad.yUm / 1000),
    `${say.length(pad.lengthUm / 1000)} × ${say.length(pad.widthUm / 1000)} × ${say.length(pad.depthUm / 1000)}`,
    say.level(pad.topZUm / 1000),
    pad.turnMdeg === 0 ? "" : `turned ${pad.turnMdeg / 1000}°`,
  ]);
  const columns = [
    ...[
      column("Tag", 6),
      column("Kind", 7),
      column("x", 9, true),
      column("y", 9, true),
      column("Length × width × depth", 24),
    ],
    ...[column("Top", 9, true), column("Remark", 14)],
  ];
  return { title: "Pads, strips and slabs", table: { name: "Schedule of pads", columns, rows } };
}

/** Every place one unit bears on another thing than plain ground, with what has to join them there. */
function connectionSchedule({ assessment }: SetSource, { tag }: Derived, say: Written): Titled {
  const rows = assessment.bearings
    .filter(({ on }) => on !== "air" && on !== "ground")
    .map((bearing) => [
      tag(bearing.unitId),
      bearing.fitting?.replaceAll("-", " ") ?? "rail crossing",
      bearing.onElementId === undefined ? bearing.on : `${bearing.on} ${tag(bearing.onElementId)}`,
      `${say.small(bearing.offsetXMm)}, ${say.small(bearing.offsetYMm)}`,
      say.small(bearing.gapMm),
      bearing.joint,
      [bearing.seatId, bearing.heldById].flatMap((id) => (id === undefined ? [] : [tag(id)])).join(", ") ||
        "none drawn",
      say.force(bearing.forceKn),
    ]);
  const columns = [
    ...[column("Unit", 6), column("Where", 14), column("Bears on", 14), column("Off in x, y", 16)],
    ...[
      column("Gap", 9, true),
      column("To be joined by", 16),
      column("Drawn", 12),
      column(`Force, ${say.forceUnit}`, 9, true),
    ],
  ];
  return {
    title: "Connections between units, and to pads",
    table: { name: "Schedule of connections", columns, rows, size: 7.4 },
  };
}

function figuresOf({ scheme, assessment }: SetSource, page: string): Figure[] {
  const from = "schedule" as const;
  const forces = postForces(assessment);
  return [
    ...scheme.openings.flatMap(({ tag: about, widthUm, heightUm, offsetUm, sillUm }): Figure[] => [
      { about, quantity: "opening width", value: widthUm / 1000, from, page },
      { about, quantity: "opening height", value: heightUm / 1000, from, page },
      { about, quantity: "opening offset", value: offsetUm / 1000, from, page },
      { about, quantity: "opening sill", value: sillUm / 1000, from, page },
    ]),
    ...scheme.posts.flatMap(({ id, tag: about, baseZUm, topZUm }): Figure[] => [
      { about, quantity: "post height", value: (topZUm - baseZUm) / 1000, from, page },
      ...(forces.has(id) ? [{ about, quantity: "post force, kN", value: forces.get(id) ?? 0, from, page }] : []),
    ]),
    ...scheme.pads.flatMap(({ tag: about, lengthUm, widthUm }): Figure[] => [
      { about, quantity: "pad length", value: lengthUm / 1000, from, page },
      { about, quantity: "pad width", value: widthUm / 1000, from, page },
    ]),
  ];
}
