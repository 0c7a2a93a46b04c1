import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import PDFDocument from "pdfkit";
import type { Face } from "./ink.ts";
import { sfntOfWoff } from "./sfnt-of-woff.ts";

const require = createRequire(import.meta.url);
const sans = "@expo-google-fonts/source-sans-3/";

/** The files of the faces; each falls back on the last for signs it does not have. */
const faceFiles = {
  lettering: require.resolve(`${sans}400Regular/SourceSans3_400Regular.ttf`),
  "lettering strong": require.resolve(`${sans}600SemiBold/SourceSans3_600SemiBold.ttf`),
  "lettering slanted": require.resolve(`${sans}400Regular_Italic/SourceSans3_400Regular_Italic.ttf`),
  prose: require.resolve("@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff"),
  digest: require.resolve("dejavu-fonts-ttf/ttf/DejaVuSansMono.ttf"),
  signs: require.resolve("dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf"),
} as const satisfies Record<Face | "signs", string>;
export type FaceFile = keyof typeof faceFiles;

const bytes = Object.entries(faceFiles).map(([name, file]) => {
  const read = readFileSync(file);
  return [name, file.endsWith(".woff") ? sfntOfWoff(read) : read] as const;
});

/** Makes the faces known to a document under their names. */
export function registerFaces(doc: PDFKit.PDFDocument): void {
  for (const [name, font] of bytes) doc.registerFont(name, font);
}

/** What stands for a sign that no face has. */
export const missingSign = "▯";

export type Run = { face: FaceFile; text: string };

/** A text as runs of one face each, in order: nothing is printed in a face that has no such sign. */
export function runsOf(text: string, face: Face): Run[] {
  const runs: Run[] = [];
  for (const sign of text.normalize("NFC")) {
    const of = faceOf(sign, face);
    const last = runs.at(-1);
    const shown = of === undefined ? missingSign : sign;
    const used = of ?? "signs";
    if (last?.face === used) last.text += shown;
    else runs.push({ face: used, text: shown });
  }
  return runs;
}

/** Width of a line, pt. */
export function widthOf(text: string, face: Face, size: number, tracking = 0): number {
  const signs = Array.from(text).length;
  const own = runsOf(text, face).reduce((sum, run) => sum + widthPerEm(run), 0);
  return own * size + signs * tracking;
}

function faceOf(sign: string, face: Face): FaceFile | undefined {
  if (hasSign(face, sign)) return face;
  return hasSign("signs", sign) ? "signs" : undefined;
}

/** Never printed: its faces measure. */
const measure = new PDFDocument({ autoFirstPage: false });
registerFaces(measure);

const ruled = 1000;
const widths = new Map<string, number>();

function widthPerEm({ face, text }: Run): number {
  const key = `${face}|${text}`;
  const known = widths.get(key);
  if (known !== undefined) return known;
  const width = measure.font(face).fontSize(ruled).widthOfString(text) / ruled;
  if (widths.size > mostKept) widths.clear();
  widths.set(key, width);
  return width;
}

const mostKept = 20_000;

const has = new Map<string, boolean>();

function hasSign(face: FaceFile, sign: string): boolean {
  const key = face + sign;
  const known = has.get(key);
  if (known !== undefined) return known;
  const found = glyphsOf(face).hasGlyphForCodePoint(sign.codePointAt(0) ?? 0);
  has.set(key, found);
  return found;
}

type Glyphs = { hasGlyphForCodePoint(code: number): boolean };

/** The font as the writer holds it: its types do not tell of the table of signs. */
function glyphsOf(face: FaceFile): Glyphs {
  measure.font(face);
  const held: unknown = Reflect.get(measure, "_font");
  const font: unknown = typeof held === "object" && held !== null ? Reflect.get(held, "font") : undefined;
  if (isGlyphs(font)) return font;
  throw new Error(`the face ${face} does not tell which signs it has`);
}

const isGlyphs = (value: unknown): value is Glyphs =>
  typeof value === "object" && value !== null && typeof Reflect.get(value, "hasGlyphForCodePoint") === "function";
