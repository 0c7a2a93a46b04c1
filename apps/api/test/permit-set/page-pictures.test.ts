import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeSet } from "../../src/permit-set/make-set.ts";
import { writePdf } from "../../src/permit-set/pdf/write-pdf.ts";
import { demoScheme, sourceOf } from "../support/sample-set.ts";

/** Coarse enough that the smoothing of another poppler hardly matters. */
const DOTS_PER_INCH = 36;
/** A grey this far off is another one, of 255. Judged, as the share below. */
const ANOTHER_GREY = 64;
/** Share of a page. Digests in the title block change less; a wall or a string of dimensions that moves changes more. */
const MOST_CHANGED = 0.002;

let folder: string;
let numbers: string[];

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-pages-"));
  const made = makeSet(sourceOf(demoScheme()));
  if (!made.ok) throw new Error(made.why.join("\n"));
  numbers = made.set.pages.map(({ number }) => number);
  writeFileSync(path.join(folder, "set.pdf"), await writePdf(made.set));
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true }));

/** One page as poppler draws it, grey, a byte a dot. */
async function drawn(number: string): Promise<Buffer> {
  const at = String(numbers.indexOf(number) + 1);
  const options = ["-r", String(DOTS_PER_INCH), "-gray", "-png", "-singlefile", "-f", at, "-l", at];
  execFileSync("pdftoppm", [...options, path.join(folder, "set.pdf"), path.join(folder, "page")]);
  return readFileSync(path.join(folder, "page.png"));
}

const stored = (number: string) => path.join(import.meta.dirname, "pictures", `${number}.png`);
const greys = (png: Buffer) => sharp(png).greyscale().raw().toBuffer();

async function shareChanged(one: Buffer, other: Buffer): Promise<number> {
  const [a, b] = [await greys(one), await greys(other)];
  if (a.length !== b.length) return 1;
  return a.reduce((sum, grey, n) => sum + Number(Math.abs(grey - (b[n] ?? 0)) > ANOTHER_GREY), 0) / a.length;
}

/** Written anew by `npx vitest run --project api apps/api/test/permit-set/page-pictures.test.ts -u`, to be looked at before they are kept. */
describe("the picture of a page of the set", () => {
  it.each(["S0", "S1.1", "S2.1", "S3", "S4.1", "S5.1", "S7", "S8", "S9.1"])(
    "%s is as it was stored",
    async (number) => {
      expect(numbers).toContain(number);
      const is = await drawn(number);
      if (expect.getState().snapshotState.snapshotUpdateState === "all") {
        mkdirSync(path.dirname(stored(number)), { recursive: true });
        writeFileSync(stored(number), is);
      }
      expect(existsSync(stored(number)), `${number} is stored`).toBe(true);
      expect(await shareChanged(is, readFileSync(stored(number)))).toBeLessThan(MOST_CHANGED);
    },
  );

  it("is another where a level is drawn for another", async () => {
    expect(await shareChanged(await drawn("S1.1"), await drawn("S1.2"))).toBeGreaterThan(MOST_CHANGED);
  });
});
