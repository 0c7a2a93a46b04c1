import { cautionLine } from "@cornerway/schema";
import type { SetSource } from "../set-source.ts";
import { headWords } from "../head-words.ts";
import { statusLine } from "../status.ts";
import { pt, type Block, type Ink } from "./ink.ts";
import { paperSizes, type Page } from "./page.ts";
import { box, caption, circleD, line, path, rule, text, type Box } from "./shapes.ts";
import { day } from "./words.ts";
import { wrap } from "./wrap.ts";

/** What a drawing sheet is: its number, title and scale, and what it is made of within its field and column. */
export type SheetSpec = { number: string; title: string; chapter: string; scale?: string };

export type SheetRoom = {
  width: number;
  height: number;
  border: Box;
  /** For views. */
  field: Box;
  /** The right column above the title block. */
  column: Box;
};

const binding = 48;
const outer = 21;
const columnWidth = 294;
const titleHeight = 206;
const inset = 16;

export function sheetRoom({ units }: Pick<SetSource, "units">): SheetRoom {
  const { width, height } = paperSizes[units].drawing;
  const border = { x: binding, y: outer, width: width - binding - outer, height: height - 2 * outer };
  const left = border.x + border.width - columnWidth;
  return {
    ...{ width, height, border },
    field: {
      x: border.x + inset,
      y: border.y + inset,
      width: left - border.x - 2 * inset,
      height: border.height - 2 * inset,
    },
    column: {
      x: left + inset,
      y: border.y + inset,
      width: columnWidth - 2 * inset,
      height: border.height - titleHeight - inset,
    },
  };
}

/** A drawing sheet with its border, binding edge and title block round the blocks given. */
export function drawingSheet(source: SetSource, spec: SheetSpec, blocks: readonly Block[]): Page {
  const room = sheetRoom(source);
  return {
    ...{ number: spec.number, title: spec.title, chapter: spec.chapter },
    ...{ width: room.width, height: room.height, form: "drawing" },
    blocks: [frame(room), ...blocks, ...titleBlock(source, spec, room)],
  };
}

function frame({ border, width, height }: SheetRoom): Block {
  const middle = { x: border.x + border.width / 2, y: border.y + border.height / 2 };
  const columnAt = border.x + border.width - columnWidth;
  const top = border.y + border.height - titleHeight;
  const holes = [0.14, 0.5, 0.86].map((share) =>
    path(circleD({ x: binding / 2, y: height * share }, 4), { pen: "hair", tone: "pencil" }),
  );
  return {
    role: "Artifact",
    inks: [
      box(border, { pen: "border" }),
      line({ x: columnAt, y: border.y }, { x: columnAt, y: border.y + border.height }, "profile"),
      rule(columnAt, border.x + border.width, top, "profile"),
      line({ x: middle.x, y: outer - 12 }, { x: middle.x, y: outer }, "edge"),
      line({ x: middle.x, y: height - outer }, { x: middle.x, y: height - outer + 12 }, "edge"),
      line({ x: width - outer, y: middle.y }, { x: width - outer + 12, y: middle.y }, "edge"),
      ...holes,
    ],
  };
}

/** Project, sheet, revision, status, caution, digests; the page number is set once all pages are there. */
function titleBlock(source: SetSource, spec: SheetSpec, { border }: SheetRoom): Block[] {
  const x = border.x + border.width - columnWidth;
  const right = border.x + border.width;
  const top = border.y + border.height - titleHeight;
  const left = x + 12;
  const { project, revision } = source;
  const cells = top + 128;
  const rules: Ink[] = [
    rule(x, right, top + 44, "fine"),
    rule(x, right, top + 84, "fine"),
    rule(x, right, cells, "edge"),
    line({ x: x + 92, y: cells }, { x: x + 92, y: border.y + border.height }, "edge"),
    line({ x: x + 214, y: cells }, { x: x + 214, y: border.y + border.height }, "edge"),
  ];
  return [
    { role: "Artifact", inks: rules },
    {
      role: "P",
      inks: [
        ...wrap(project.name, "prose", 15, columnWidth - 24)
          .slice(0, 1)
          .map((words) => text(left, top + 20, words, { face: "prose", size: 15 })),
        ...wrap(`${project.place} · ${project.client}`, "lettering", 8, columnWidth - 24)
          .slice(0, 1)
          .map((words) => text(left, top + 34, words, { tone: "graphite" })),
        ...wrap(spec.title, "prose", 12, columnWidth - 24)
          .slice(0, 1)
          .map((words) => text(left, top + 59, words, { face: "prose", size: 12 })),
        text(left, top + 76, statusLine(source), { face: "lettering strong", size: 9.5 }),
        ...wrap(`${cautionLine}. Cautions: S0, S0.1.`, "lettering slanted", 7.4, columnWidth - 24).map((words, at) =>
          text(left, top + 95 + at * 9, words, { face: "lettering slanted", size: 7.4 }),
        ),
        caption(left, top + 114, "Digest of set", { size: 7 }),
      ],
    },
    { role: "P", inks: [{ kind: "digest", of: "set", x: pt(left + 66), y: pt(top + 114), size: 7, perLine: 8 }] },
    {
      role: "P",
      inks: [
        caption(x + 8, cells + 12, "Sheet"),
        text(x + 8, cells + 52, spec.number, { size: spec.number.length > 4 ? 26 : 34 }),
        caption(x + 100, cells + 12, "Revision"),
        text(x + 100, cells + 24, `${revision.letter} · ${day(revision.sentAt)}`, { size: 9.5 }),
        caption(x + 100, cells + 38, "Scale"),
        text(x + 100, cells + 50, spec.scale ?? "none", { size: 9.5 }),
        caption(x + 100, cells + 62, "Record to entry"),
        text(x + 164, cells + 62, String(source.record.number), { size: 8 }),
        text(x + 100, cells + 72, headWords(source, 8), { size: 7, tone: "graphite" }),
        caption(x + 222, cells + 12, "Page"),
      ],
    },
  ];
}

/** Where the page number of a drawing sheet stands. */
export const drawingPagePlace = ({ width, height }: { width: number; height: number }) => ({
  x: width - outer - columnWidth + 222,
  y: height - outer - titleHeight + 128 + 26,
});
