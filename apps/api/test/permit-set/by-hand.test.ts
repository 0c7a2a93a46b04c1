import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeSet } from "../../src/permit-set/make-set.ts";
import type { Block, TextInk } from "../../src/permit-set/paper/ink.ts";
import { widthOf } from "../../src/permit-set/paper/typefaces.ts";
import { writePdf } from "../../src/permit-set/pdf/write-pdf.ts";
import type { PermitSet } from "../../src/permit-set/permit-set.ts";
import { heldUnit } from "../support/held-unit.ts";
import { sourceOf } from "../support/sample-set.ts";

// Three numbers redone from what stands on the pages and nothing else, as shared/verification/by-hand.md shows for the demo.
// The PDF is read by poppler; the arithmetic is written out here and uses no code of the program.
let folder: string;
let set: PermitSet;
let text: string;

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-by-hand-"));
  const made = makeSet(sourceOf(heldUnit(), { strength: true }));
  if (!made.ok) throw new Error(made.why.join("\n"));
  set = made.set;
  const file = path.join(folder, "set.pdf");
  writeFileSync(file, await writePdf(set));
  text = execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8", maxBuffer: 1e8 });
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true }));

/** What is printed of a working: from its heading, which begins with its number, to the next one. */
function working(title: string): string {
  const lines = text.split("\n");
  const heading = (line: string) => /^\s*[LM]\d+(\.\d+)*\s{2,}/.test(line);
  const from = lines.findIndex((line) => heading(line) && line.trim().split(/\s{2,}/)[1] === title);
  if (from < 0) throw new Error(`no working ${title} is printed`);
  const next = lines.findIndex((line, at) => at > from && heading(line));
  return lines.slice(from, next).join("\n");
}

/** The value printed in the row of a symbol: "Ag   4230 mm²   door post …". Thousands stand apart by a narrow space. */
function input(of: string, symbol: string): number {
  const row = of.split("\n").find((line) => line.trim().split(/\s{2,}/)[0] === symbol);
  return numberIn(row?.trim().split(/\s{2,}/)[1] ?? "");
}

const numberIn = (words: string): number =>
  Number(/^[−\d.\s\u2009\u202F]+/.exec(words)?.[0].replaceAll(/[^\d.]/g, "") || NaN);

/** "Pc = 676 502 N · …": the last line that says so. */
function result(of: string, symbol: string): number {
  const line = of.split("\n").findLast((each) => each.trim().startsWith(`${symbol} = `)) ?? "";
  return numberIn(line.trim().slice(symbol.length + 3));
}

/** Inputs are printed to four figures: the result agrees to one in a thousand. */
const agrees = (byHand: number, printed: number): void => {
  expect(Number.isFinite(byHand)).toBe(true);
  expect(Math.abs(byHand / printed - 1)).toBeLessThan(0.001);
};

describe("three numbers redone by hand from the pages alone", () => {
  it("dead load of a container: tare, finishes, plant and added steel; four pads give it back", () => {
    const load = working("Dead load of G1, most");
    const [m, g, p, area, plant, steel] = ["m", "g", "p", "A", "P", "S"].map((symbol) => input(load, symbol));
    const dead = (m ?? NaN) * (g ?? NaN) + (p ?? NaN) * (area ?? NaN) + (plant ?? NaN) + (steel ?? NaN);
    agrees(dead, result(load, "D"));
    const sums = text.split("\n").find((line) => line.trim().startsWith("All supports")) ?? "";
    const [, solved = ""] = sums.trim().split(/\s{2,}/);
    expect(Math.abs(Number(solved) - dead / 1000)).toBeLessThan(0.05 + 0.001 * (dead / 1000));
  });

  it("pressure under the fullest pad: force over area, over what the ground may take", () => {
    const bearing = working("Bearing on soil");
    const force = input(bearing, "P");
    const pressure = (force / (input(bearing, "L") * input(bearing, "B"))) * 1000; // N/mm² to kPa
    agrees(pressure, result(bearing, "q"));
    const ratio = Number(
      /(\d+\.\d\d)\s*$/.exec(bearing.split("\n").find((line) => line.includes(" against qa")) ?? "")?.[1],
    );
    expect(Math.abs(ratio - pressure / input(bearing, "qa"))).toBeLessThan(0.006);
  });

  it("strength of a corner post by itself: buckling by AISI S100-2016 E2, no wall of it reduced by E3.1", () => {
    const post = working("Door corner post alone");
    const [E, Fy, Ag, r, L] = ["E", "Fy", "Ag", "r", "L"].map((symbol) => input(post, symbol));
    const [w, t, phi] = ["w", "t", "φ"].map((symbol) => input(post, symbol));
    const buckling = (Math.PI ** 2 * (E ?? NaN)) / ((L ?? NaN) / (r ?? NaN)) ** 2;
    const slender = Math.sqrt((Fy ?? NaN) / buckling);
    expect(slender).toBeLessThan(1.5);
    const stress = 0.658 ** (slender ** 2) * (Fy ?? NaN);
    const ofWall = ((4 * Math.PI ** 2 * (E ?? NaN)) / (12 * (1 - 0.3 ** 2))) * ((t ?? NaN) / (w ?? NaN)) ** 2;
    expect(Math.sqrt(stress / ofWall)).toBeLessThan(0.673);
    agrees((phi ?? NaN) * (Ag ?? NaN) * stress, result(post, "Pc"));
  });
});

it("checks are printed in full where strength was run, every formula within its page", () => {
  const textsOf = ({ inks, children = [] }: Block): TextInk[] => [
    ...inks.filter((ink) => ink.kind === "text"),
    ...children.flatMap(textsOf),
  ];
  const formulas = set.pages.flatMap(({ blocks }) => blocks.filter(({ role }) => role === "Formula"));
  expect(formulas.length).toBeGreaterThan(20);
  const ends = formulas.flatMap(textsOf).map((ink) => ink.x + widthOf(ink.text, ink.face, ink.size));
  expect(Math.max(...ends)).toBeLessThan(set.pages.at(-2)?.width ?? 0);
});
