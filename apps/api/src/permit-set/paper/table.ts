import { pt, type Block, type Face, type Ink } from "./ink.ts";
import { rule, text } from "./shapes.ts";
import { wrap } from "./wrap.ts";

/** A column: its heading, its share of the width, and how its cells stand. */
export type Column = { heading: string; share: number; right?: boolean; face?: Face };

export type TableRow = readonly string[];

export type Table = { columns: readonly Column[]; rows: readonly TableRow[]; size?: number; name: string };

/** A table broken to the heights given: `next` says how much room the page at hand, and each after it, has. */
export type TablePart = { block: Block; height: number; rows: number };

const gap = 11;
const headHeight = 15;

/** As many rows from `from` as fit in `room`, with the heading; at least one, so that the next page begins further on. */
export function tablePart(table: Table, from: number, x: number, y: number, width: number, room: number): TablePart {
  const size = table.size ?? 8;
  const places = placesOf(table.columns, x, width);
  const head: Block = {
    role: "TR",
    inks: [],
    children: table.columns.map(({ heading, right = false }, at) => {
      const { from: left, to } = places[at] ?? { from: x, to: x };
      return {
        role: "TH",
        inks: [
          text(right ? to : left, y + 8, heading, { size: 7, tone: "graphite", ...(right ? { anchor: "end" } : {}) }),
        ],
      };
    }),
  };
  const rules: Ink[] = [rule(x, x + width, pt(y + headHeight - 3), "edge")];
  const bodies: Block[] = [];
  let at = y + headHeight;
  let count = 0;
  for (const row of table.rows.slice(from)) {
    const cells = cellsOf(table.columns, places, row, size);
    const height = heightOf(cells, size);
    if (count > 0 && at + height > y + room) break;
    bodies.push({ role: "TR", inks: [], children: cells.map((cell) => cellBlock(cell, at, size)) });
    at += height;
    rules.push(rule(x, x + width, pt(at - 1.2), "hair", "ruling"));
    count += 1;
  }
  return {
    block: { role: "Table", alt: table.name, inks: [], children: [head, ...bodies, { role: "Artifact", inks: rules }] },
    height: at - y,
    rows: count,
  };
}

/** What the heading with one row takes, pt: less room than this is none. */
export function leastRoom(table: Table, row: number, width: number): number {
  const size = table.size ?? 8;
  const cells = cellsOf(table.columns, placesOf(table.columns, 0, width), table.rows[row] ?? [], size);
  return headHeight + heightOf(cells, size);
}

const heightOf = (cells: readonly Cell[], size: number): number =>
  Math.max(1, ...cells.map(({ lines }) => lines.length)) * size * 1.28 + 3.4;

type Place = { from: number; to: number };

function placesOf(columns: readonly Column[], x: number, width: number): Place[] {
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  let at = x;
  return columns.map(({ share }, index) => {
    const wide = (width * share) / whole;
    const place = { from: at, to: at + wide - (index === columns.length - 1 ? 0 : gap) };
    at += wide;
    return place;
  });
}

type Cell = { lines: string[]; place: Place; column: Column };

const cellsOf = (columns: readonly Column[], places: readonly Place[], row: TableRow, size: number): Cell[] =>
  columns.map((column, at) => {
    const place = places[at] ?? { from: 0, to: 0 };
    const face = column.face ?? "lettering";
    return { column, place, lines: wrap(row[at] ?? "", face, size, place.to - place.from) };
  });

const cellBlock = ({ lines, place, column }: Cell, y: number, size: number): Block => ({
  role: "TD",
  inks: lines.map((words, line) =>
    text(column.right === true ? place.to : place.from, y + size + line * size * 1.28, words, {
      ...{ size, face: column.face ?? "lettering" },
      ...(column.right === true ? { anchor: "end" as const } : {}),
    }),
  ),
});
