import type { SetSource } from "../set-source.ts";
import { headWords } from "../head-words.ts";
import { statusLine } from "../status.ts";
import { pt, type Block, type Ink } from "./ink.ts";
import { paperSizes, type Page } from "./page.ts";
import { box, caption, line, rule, text, type Box } from "./shapes.ts";
import { leastRoom, tablePart, type Table } from "./table.ts";
import { day } from "./words.ts";
import { wrap } from "./wrap.ts";

const left = 54;
const right = 34;
const top = 26;
const bottom = 56;
const headHeight = 32;
/** A table begins, or goes on, where there is room for its heading and some rows, pt. */
const leastTable = 46;
/** Where the cell of the page number begins, of the width of the head. */
const pageShare = 0.88;

/**
 * Calculations, subject by subject: each begins on a page of its own and flows on to as many as it needs. Pages are
 * numbered C1, C2 and so on, or from another number.
 */
export class CalculationFlow {
  readonly pages: Page[] = [];
  readonly #source: SetSource;
  readonly #chapter: string;
  readonly #first: number;
  #blocks: Block[] = [];
  #subject = "";
  #y = 0;

  constructor(source: SetSource, chapter: string, first = 1) {
    this.#source = source;
    this.#chapter = chapter;
    this.#first = first;
  }

  /** Where blocks of a page may stand. */
  get area(): Box {
    const { width, height } = paperSizes[this.#source.units].calculation;
    const y = top + headHeight + 18;
    return { x: left, y, width: width - left - right, height: height - y - bottom };
  }

  get y(): number {
    return this.#y;
  }

  /** Number of the page that is being laid. */
  get number(): string {
    return `C${this.pages.length - 1 + this.#first}`;
  }

  subject(title: string): this {
    this.#subject = title;
    this.#open();
    this.#heading("H1", title, 17, 24);
    return this;
  }

  heading(words: string): this {
    this.need(60);
    this.#y += 4;
    this.#heading("H2", words, 11.5, 17);
    return this;
  }

  paragraph(words: string, { size = 9.4, face = "prose" as const } = {}): this {
    const lines = wrap(words, face, size, this.area.width);
    let from = 0;
    while (from < lines.length) {
      this.need(size * 1.35);
      const room = Math.max(1, Math.floor((this.#bottom - this.#y) / (size * 1.35)));
      const part = lines.slice(from, from + room);
      const y = this.#y;
      this.add(
        { role: "P", inks: part.map((each, at) => text(left, y + size + at * size * 1.35, each, { face, size })) },
        part.length * size * 1.35,
      );
      from += part.length;
    }
    this.#y += 4;
    return this;
  }

  table(table: Table): this {
    if (table.rows.length === 0) return this.paragraph("None.");
    let from = 0;
    while (from < table.rows.length) {
      const { x, width } = this.area;
      this.need(Math.max(leastTable, leastRoom(table, from, width)));
      const part = tablePart(table, from, x, this.#y, width, this.#bottom - this.#y);
      this.add(part.block, part.height);
      from += part.rows;
    }
    this.#y += 9;
    return this;
  }

  /** Something of a known height, drawn from a corner. */
  block(height: number, draw: (at: Box) => Block): this {
    this.need(height);
    const { x, width } = this.area;
    this.add(draw({ x, y: this.#y, width, height }), height);
    return this;
  }

  add(block: Block, height: number): void {
    this.#blocks.push(block);
    this.#y = pt(this.#y + height);
  }

  gap(height: number): this {
    this.#y += height;
    return this;
  }

  /** Opens a page when less than `height` is left. */
  need(height: number): void {
    if (this.#y + height > this.#bottom) this.#open();
  }

  get #bottom(): number {
    return this.area.y + this.area.height;
  }

  #heading(role: "H1" | "H2", words: string, size: number, lead: number): void {
    const lines = wrap(words, "prose", size, this.area.width);
    const y = this.#y;
    this.add(
      { role, inks: lines.map((each, at) => text(left, y + size + at * lead, each, { face: "prose", size })) },
      lines.length * lead + 3,
    );
  }

  #open(): void {
    const { width, height } = paperSizes[this.#source.units].calculation;
    this.#blocks = calculationFrame(this.#source, this.#subject, width, height);
    this.pages.push({
      ...{ number: `C${this.pages.length + this.#first}`, title: this.#subject, chapter: this.#chapter },
      ...{ width, height, form: "calculation", blocks: this.#blocks },
    });
    this.#y = this.area.y;
  }
}

/** The ruled margin, the head with its cells and the foot. BY and CHECKED are people: the cells stay blank for them. */
function calculationFrame(source: SetSource, subject: string, width: number, height: number): Block[] {
  const { project, revision } = source;
  const head: Box = { x: left, y: top, width: width - left - right, height: headHeight };
  const places = [0, 0.26, 0.53, 0.67, 0.77, pageShare].map((share) => head.x + head.width * share);
  const names = ["Project", "Subject", "Revision", "By", "Checked", "Page"];
  const words = [project.name, subject, `${revision.letter}, ${day(revision.sentAt)}`, "", "", ""];
  const foot = height - bottom + 12;
  const inks: Ink[] = [
    line({ x: left - 16, y: 0 }, { x: left - 16, y: height }, "hair", { tone: "ruling" }),
    box(head, { pen: "edge" }),
    ...places.slice(1).map((x) => line({ x, y: head.y }, { x, y: head.y + head.height }, "edge")),
    rule(left, width - right, foot - 6, "edge"),
  ];
  return [
    { role: "Artifact", inks },
    {
      role: "P",
      inks: names.flatMap((name, at) => {
        const x = (places[at] ?? 0) + 6;
        const next = places[at + 1] ?? head.x + head.width;
        const [first = ""] = wrap(words[at] ?? "", "lettering", 8.6, next - x - 4);
        return [
          caption(x, head.y + 10.5, name, { size: 7 }),
          ...(first === "" ? [] : [text(x, head.y + 23, first, { size: 8.6 })]),
        ];
      }),
    },
    {
      role: "P",
      inks: [
        text(
          left,
          foot + 3,
          `${statusLine(source)}. Screening: it supports the judgement of an engineer and does not replace it.`,
          { size: 7 },
        ),
        text(
          left,
          foot + 12,
          "Generic container values; verify in the field. Lifting, cutting and shoring need plans of their own. Local code governs.",
          { size: 7, tone: "graphite" },
        ),
        text(left, foot + 21, "page", { size: 7, tone: "graphite" }),
        text(left, foot + 30, "set", { size: 7, tone: "graphite" }),
        text(width - right, foot + 12, `record to entry ${source.record.number}, ${headWords(source, 8)}`, {
          ...{ size: 7, tone: "graphite", anchor: "end" },
        }),
        { kind: "digest", of: "page", x: pt(left + 22), y: pt(foot + 21), size: 7, perLine: 16 },
        { kind: "digest", of: "set", x: pt(left + 22), y: pt(foot + 30), size: 7, perLine: 16 },
      ],
    },
  ];
}

/** Where the page number of a calculation stands. */
export const calculationPagePlace = ({ width }: { width: number; height: number }) => ({
  x: left + (width - left - right) * pageShare + 6,
  y: top + 23,
});
