import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { cautionLine, type PlanCheckComment } from "@cornerway/schema";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeSet } from "../../src/permit-set/make-set.ts";
import type { Block, DigestInk, TextInk } from "../../src/permit-set/paper/ink.ts";
import { missingSign, widthOf } from "../../src/permit-set/paper/typefaces.ts";
import { writePdf } from "../../src/permit-set/pdf/write-pdf.ts";
import { digestsOf, type PermitSet } from "../../src/permit-set/permit-set.ts";
import type { SetSource } from "../../src/permit-set/set-source.ts";
import { demoScheme, smallScheme, sourceOf } from "../support/sample-set.ts";

// The set is read by poppler (pdftotext, pdfinfo), which knows nothing of what wrote it.
const comment: PlanCheckComment = {
  ...{ id: "00000000-0000-4000-8000-00000000000a", order: 1, number: "S-4", discipline: "Structural", about: "S7" },
  ...{ text: "State the soil value used for pads.", state: "answered", assignedTo: null, closed: null },
  broughtInBy: { id: "00000000-0000-4000-8000-000000000002", name: "Tobias Fenn", role: "engineer" },
  broughtInAt: "2026-11-27T11:00:00.000Z",
  reply: {
    ...{ form: "done", text: "Stated with its source.", revision: "A", sheet: "S7", detail: null, page: "24" },
    by: { id: "00000000-0000-4000-8000-000000000002", name: "Tobias Fenn", role: "engineer" },
    at: "2026-11-27T11:30:00.000Z",
  },
};

const made = (source: SetSource): PermitSet => {
  const outcome = makeSet(source);
  if (!outcome.ok) throw new Error(outcome.why.join("\n"));
  return outcome.set;
};

let folder: string;
let set: PermitSet;
let pdf: Buffer;
let pages: string[];

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-set-"));
  set = made(sourceOf(demoScheme(), { comments: [comment] }));
  pdf = await writePdf(set);
  pages = textOf(pdf);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true }));

function textOf(bytes: Buffer): string[] {
  const file = path.join(folder, "set.pdf");
  writeFileSync(file, bytes);
  return execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8", maxBuffer: 1e8 })
    .split("\f")
    .slice(0, -1);
}

const infoOf = (): string => execFileSync("pdfinfo", ["-l", "-1", path.join(folder, "set.pdf")], { encoding: "utf8" });
/** The page of that subject: the first with the words that is not the index of subjects. */
const page = (words: string): string =>
  pages.find((text) => text.includes(words) && !text.includes("Index of the calculations")) ?? "";
const textsOf = ({ inks, children = [] }: Block): TextInk[] => [
  ...inks.filter((ink) => ink.kind === "text"),
  ...children.flatMap(textsOf),
];
const digestsIn = ({ inks, children = [] }: Block): DigestInk[] => [
  ...inks.filter((ink) => ink.kind === "digest"),
  ...children.flatMap(digestsIn),
];
/** Columns of the rows of a printed table, from the row whose first cell is one of these. */
const row = (text: string, first: string): string[] =>
  text
    .split("\n")
    .map((line) => line.trim().split(/\s{2,}/))
    .find(([cell]) => cell === first) ?? [];
const numbers = (cells: readonly string[]): number[] =>
  cells.map((cell) => Number(cell.replace("−", "-"))).filter(Number.isFinite);

/** Where words stand on their page, pt; capitals are about 0.7 of the size high. */
type WordBox = { of: string; x0: number; x1: number; y0: number; y1: number };

function boxOf({ text, x, y, face, size, tracking, anchor, turn }: TextInk): WordBox {
  const width = widthOf(text, face, size, tracking);
  const before = anchor === "end" ? width : anchor === "middle" ? width / 2 : 0;
  const high = 0.7 * size;
  if (turn === 90) return { of: text, x0: x - high, x1: x, y0: y - width + before, y1: y + before };
  return { of: text, x0: x - before, x1: x - before + width, y0: y - high, y1: y };
}

/** A digest is 16 groups of four signs, some to a line. */
function boxOfDigest({ of, x, y, size, perLine }: DigestInk): WordBox {
  const width = widthOf("0000 ".repeat(perLine).trim(), "digest", size);
  return { of: `digest of ${of}`, x0: x, x1: x + width, y0: y - 0.7 * size, y1: y + (16 / perLine - 1) * size };
}

/** Nearer than a pt they touch and do not cover each other. */
const meet = (one: WordBox, other: WordBox): boolean =>
  Math.min(one.x1, other.x1) - Math.max(one.x0, other.x0) > 1 &&
  Math.min(one.y1, other.y1) - Math.max(one.y0, other.y0) > 1;

describe("the set of a revision", () => {
  it("is tagged PDF 1.7 with its title and bookmarks, drawings on A3 and calculations on A4 (ISO 216: 297 × 420 mm)", () => {
    const info = infoOf();
    expect(info).toMatch(/Tagged:\s+yes/);
    expect(info).toMatch(/PDF version:\s+1\.7/);
    expect(info).toMatch(/Title:\s+Tannery Lane Workshop, structural permit set, revision A/);
    expect(info).toMatch(/Page\s+1 size:\s+1190\.55 x 841\.89 pts \(A3\)/);
    const [a4 = ""] = info.split("\n").filter((line) => line.endsWith("(A4)"));
    expect(a4).toMatch(/595\.28 x 841\.89/);
    expect(pdf.includes("/Outlines")).toBe(true);
  });

  it("cuts each frame, post end and pad of the scheme once, with what it is made of, under the tags it stands for", () => {
    const details = set.pages.filter(({ number }) => number.startsWith("S9."));
    const alts = details.flatMap(({ blocks }) => blocks.flatMap(({ alt }) => (alt === undefined ? [] : [alt])));
    const tagsUnder = (subject: string) =>
      alts.filter((alt) => alt.startsWith(subject)).flatMap((alt) => /at ([^:]*):/.exec(alt)?.[1]?.split(", ") ?? []);
    const { openings, posts, pads } = demoScheme();
    const inWalls = openings.filter(({ framed, face }) => framed && face !== "roof" && face !== "floor");
    const tagsOf = (elements: readonly { tag: string }[]) => elements.map(({ tag }) => tag).toSorted();
    expect(tagsUnder("Head of opening").toSorted()).toEqual(tagsOf(inWalls));
    expect(tagsUnder("Foot of post").toSorted()).toEqual(tagsOf(posts));
    const known = new Set(pads.map(({ tag }) => tag));
    expect(tagsUnder("Pad").every((tag) => known.has(tag))).toBe(true);
    expect(alts.filter((alt) => alt.startsWith("Foot of post")).join(" ")).toMatch(/stated plate \d+×\d+×\d+/);
    expect(new Set(alts).size).toBe(alts.length);
  });

  it("lets no table run into the foot of its page, which begins 56 pt above its edge", () => {
    const tablesOf = ({ role, children = [], inks }: Block): Block[] =>
      role === "Table" ? [{ role, inks, children }] : children.flatMap(tablesOf);
    const low = set.pages
      .filter(({ form }) => form === "calculation")
      .flatMap(({ number, height, blocks }) =>
        blocks
          .flatMap(tablesOf)
          .flatMap(textsOf)
          .filter(({ y }) => y > height - 56)
          .map(({ text }) => `${number}: ${text}`),
      );
    expect(low).toEqual([]);
  });

  it("carries n of N, its status, the caution and both digests on every page", () => {
    const { set: digest } = digestsOf(set);
    const grouped = digest.match(/.{4}/g)?.slice(0, 8).join(" ") ?? "";
    expect(pages).toHaveLength(set.pages.length);
    for (const [at, text] of pages.entries()) {
      expect(text).toContain(`${at + 1} of ${pages.length}`);
      expect(text).toContain("PRELIMINARY");
      expect(text).toContain(grouped);
      expect(text).toMatch(/Preliminary until sealed by a licensed\s+engineer|Screening: it supports the judgement/);
    }
    expect(cautionLine).toContain("Preliminary until sealed");
  });

  it("holds every part a plan checker looks for", () => {
    const parts = [
      ...["General notes and design data", "PLAN, GROUND LEVEL", "SOUTH ELEVATION", "SECTION 1, LOOKING WEST"],
      ...["FROM THE SOUTH-EAST", "WHAT THE FIRST LEVEL STANDS ON", "Cut plan, container F1", "FOUNDATION PLAN"],
      ...["LINE MODEL FROM THE SOUTH-EAST", "Criteria and basis", "Combinations", "Load path, storey by storey"],
      ...[
        "All supports",
        "By hand, from these pages",
        "What the engine notes, worst first",
        "Sections of the line model",
      ],
      ...["Strength has not been checked for this revision", "Hold points", "Special inspections", "Lifting"],
      ...["Deferred items", "Assumptions", "Coverage", "Values from memory, still unconfirmed"],
      ...["Software statement and verification", "Response to plan-check comments", "The record"],
    ];
    const whole = pages.join("\n").replaceAll(/\s+/g, " ");
    expect(parts.filter((part) => !whole.includes(part))).toEqual([]);
  });

  it("lists every sheet on its cover under the page it stands on", () => {
    const lines = [...(pages[0] ?? "").matchAll(/(\S[^\n]*?), page (\d+)/g)];
    expect(lines.length).toBeGreaterThan(8);
    for (const [, title = "", at] of lines) {
      const listed = set.pages[Number(at) - 1];
      expect([listed?.title, listed?.chapter]).toContain(
        title
          .trim()
          .split(/\s{2,}/)
          .at(-1),
      );
    }
  });

  it("answers a comment with sheet and page, word for word as it came", () => {
    const text = page("Response to plan-check comments").replaceAll(/\s+/g, " ");
    expect(text).toContain("1 comments came in; 1 are answered below and 0 are still open");
    expect(text).toContain("S-4");
    expect(text).toContain("State the soil value");
  });

  it("gives numbers that close when they are redone by hand from its pages", () => {
    const byHand = page("By hand, from these pages");
    const weights = demoScheme().containers.map(({ tag }) => numbers(row(byHand, tag).slice(1)));
    const total = weights.reduce((sum, [own = NaN, imposed = NaN]) => sum + own + imposed, 0);
    const [, , all = NaN] = numbers(
      row(pages.find((text) => /^\s*All supports/m.test(text)) ?? "", "All supports").slice(1),
    );
    // Nine containers, each printed to 0.1 kN: within 9 × 2 × 0.05.
    expect(Math.abs(total - all)).toBeLessThan(0.9);
    // What bears on a post, printed beside what the program says comes down on it.
    const posts = ["P1", "P2"].map((tag) => numbers(row(byHand, tag).slice(1)));
    for (const [hand, program] of posts) expect(hand).toBeCloseTo(program ?? NaN, 1);
  });

  it("has an index of its calculations that gives the page of the set each subject begins on", () => {
    const index = pages.find((text) => text.includes("Index of the calculations")) ?? "";
    const lines = index.split("\n").flatMap((line) => {
      const [title = "", numbers = "", at = ""] = line.trim().split(/\s{2,}/);
      return /^C\d/.test(numbers) ? [{ title, first: numbers.split(" ")[0], at: Number(at) }] : [];
    });
    expect(lines.length).toBeGreaterThan(15);
    for (const { title, first, at } of lines) {
      expect(set.pages[at - 1]).toMatchObject({ title, number: first });
      expect(pages[at - 1]?.replaceAll(/\s+/g, " "), title).toContain(`${at} of ${pages.length} ${title}`);
    }
  });

  it("has no words over others on any page", () => {
    const faults = set.pages.flatMap((each) => {
      const boxes = each.blocks.flatMap((block) => [
        ...textsOf(block).map(boxOf),
        ...digestsIn(block).map(boxOfDigest),
      ]);
      return boxes.flatMap((one, at) =>
        boxes
          .slice(at + 1)
          .flatMap((other) => (meet(one, other) ? [`${each.number}: ${one.of} over ${other.of}`] : [])),
      );
    });
    expect(faults).toEqual([]);
  });

  it("has no sign that its faces lack, nothing beyond its pages, nothing under 7 pt but indices", () => {
    const faults = set.pages.flatMap((each) =>
      each.blocks.flatMap(textsOf).flatMap((ink) => {
        const width = widthOf(ink.text, ink.face, ink.size, ink.tracking);
        const start = ink.anchor === "end" ? ink.x - width : ink.anchor === "middle" ? ink.x - width / 2 : ink.x;
        const [from, to] = ink.turn === 90 ? [ink.x - ink.size, ink.x] : [start, start + width];
        const why = [
          ...(ink.text.includes(missingSign) ? ["sign"] : []),
          ...(from < 2 || to > each.width - 2 || ink.y < 2 || ink.y > each.height - 2 ? ["beyond the page"] : []),
          ...(ink.size < 7 && ink.face !== "prose" ? ["small"] : []),
        ];
        return why.map((what) => `${each.number}: ${what}: ${ink.text}`);
      }),
    );
    expect(faults).toEqual([]);
  });
});

describe("makeSet(source) and writePdf(set)", () => {
  it("give the same digest and the same bytes for the same source", async () => {
    const source = sourceOf(smallScheme());
    const [one, other] = [made(source), made(structuredClone(source))];
    expect(digestsOf(other)).toEqual(digestsOf(one));
    expect((await writePdf(other)).equals(await writePdf(one))).toBe(true);
  });

  it("change the digest of the set with one word of it", () => {
    const source = sourceOf(smallScheme());
    const other = { ...source, project: { ...source.project, client: "Another owner" } };
    expect(digestsOf(made(other)).set).not.toBe(digestsOf(made(source)).set);
  });

  it("take PRELIMINARY off once it is issued for seal, and then ask for the seal", () => {
    const issued = made(
      sourceOf(smallScheme(), { status: { kind: "issued", by: "Tobias Fenn", at: "2026-11-27T12:00:00.000Z" } }),
    );
    const words = issued.pages.flatMap(({ blocks }) => blocks.flatMap(textsOf)).map(({ text }) => text);
    expect(words.filter((text) => text.includes("PRELIMINARY"))).toEqual([]);
    expect(words.filter((text) => text.startsWith("Not valid without the seal of the")).length).toBeGreaterThan(10);
  });

  it("are in tabloid and letter for US units (17 × 11 in and 8.5 × 11 in at 72 pt)", () => {
    const { pages: sheets } = made(sourceOf(smallScheme(), { units: "US" }));
    expect(sheets[0]).toMatchObject({ width: 17 * 72, height: 11 * 72 });
    expect(sheets.find(({ form }) => form === "calculation")).toMatchObject({ width: 8.5 * 72, height: 11 * 72 });
  });

  it("print nothing where scheme, assessment and revision are not one", () => {
    const source = sourceOf(smallScheme());
    const [unit] = source.scheme.containers;
    const moved = { ...source.scheme, containers: unit === undefined ? [] : [{ ...unit, xUm: 1000 }] };
    expect(makeSet({ ...source, scheme: moved })).toMatchObject({ ok: false });
    const other = { ...source.assessment, questions: source.assessment.questions + 1 };
    expect(makeSet({ ...source, assessment: other })).toMatchObject({ ok: false });
  });

  it("stop between pages when they are told to", async () => {
    const stop = new AbortController();
    const writing = writePdf(made(sourceOf(smallScheme())), {
      signal: stop.signal,
      onPage: (done) => {
        if (done === 2) stop.abort(new Error("enough"));
      },
    });
    await expect(writing).rejects.toThrow("enough");
  });
});
