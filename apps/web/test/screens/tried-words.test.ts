import { describe, expect, it } from "vitest";
import { sharedArea } from "../../src/drawing/label/place-labels.ts";
import { triedBox } from "../../src/screens/openings/tried-words.ts";

const words = "D1 now: 2.00 m at 5.00 m";
const at = { xPx: 400, yPx: 300 };

describe("what is said of the place that is tried", () => {
  it("stands over it", () => {
    const box = triedBox(words, at, []);
    expect(box.bottom).toBeLessThan(300);
    expect((box.left + box.right) / 2).toBe(400);
  });

  it("stands elsewhere beside it where it would lie over a stroke or a figure", () => {
    const figure = { left: 340, right: 420, top: 260, bottom: 290 };
    expect(sharedArea(triedBox(words, at, []), figure)).toBeGreaterThan(0);
    expect(sharedArea(triedBox(words, at, [figure]), figure)).toBe(0);
    const stroke = { left: 370, right: 380, top: 0, bottom: 600 };
    expect(sharedArea(triedBox(words, at, [figure, stroke]), stroke)).toBe(0);
  });
});
