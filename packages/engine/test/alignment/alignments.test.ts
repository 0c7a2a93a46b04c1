import { alignments } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

// ISO 668, from memory: hole centres of a 20 ft unit 5853 mm lengthwise and 2259 mm crosswise, of a 40 ft unit 11 985 mm
// lengthwise; every unit 2438 mm wide.
const high = 2896;

describe("alignments", () => {
  it("lands two fittings of a 20 ft unit turned across two parallel ones at a gap of 5853 − 2259 − 2438 = 1156 mm, the other two on rails", () => {
    // From middle to middle of the two units 2438 + gap, and from each middle to its outer holes 2259/2: outer holes are
    // 2438 + 2259 + gap apart. They must be 5853.
    expect(5853 - 2259 - 2438).toBe(1156);
    const scheme = schemeOf({
      units: [
        { id: "a", type: "1CCC", x: 0, y: 0 },
        { id: "b", type: "1CCC", x: 0, y: 2438 + 1000 },
        { id: "t", type: "1CCC", x: 500, y: 1700, z: high, turn: 90 },
      ],
    });
    const found = alignments(scheme, "t").filter(({ gap }) => gap?.neededMm === 1156);
    const outer = found.find(({ gap }) => gap?.betweenIds[0] === "a");
    expect(outer?.gap).toMatchObject({ nowMm: 1000, neededMm: 1156, move: { id: "b", dxMm: 0, dyMm: 156 } });
    expect(outer?.landings.map(({ onId }) => onId).toSorted()).toEqual(["a", "b"]);
    for (const { alongMm, acrossMm, kind } of outer?.landings ?? []) {
      expect(alongMm).toBe(0);
      expect(acrossMm).toBe(0);
      // Apertures cross at a quarter turn: no stock lock.
      expect(kind).toBe("bearing without lock");
    }
    expect(outer?.onRails.map(({ onId }) => onId).toSorted()).toEqual(["a", "b"]);
    expect(outer?.onRails.map(({ rail }) => rail).toSorted()).toEqual(["left", "right"]);
  });

  it("says so of the very move: drawn with that gap, two corners bear on fittings there and two on rails", () => {
    const apart = 2438 + 1156;
    const scheme = schemeOf({
      units: [
        { id: "a", type: "1CCC", x: 0, y: 0 },
        { id: "b", type: "1CCC", x: 0, y: apart },
        // Its western corners over the front ends: x of the holes −5853/2, its own middle 2259/2 further east.
        { id: "t", type: "1CCC", x: -5853 / 2 + 2259 / 2 + 40, y: apart / 2 - 25, z: high, turn: 90 },
      ],
    });
    const best = alignments(scheme, "t").find(({ gap }) => gap === undefined);
    expect(best?.dxMm).toBe(-40);
    expect(best?.dyMm).toBe(25);
    expect(best?.landings).toHaveLength(2);
    expect(best?.onRails).toHaveLength(2);
  });

  it("ends 13 mm short of the outer holes each side with a 40 ft unit turned across five touching ones: bearing without lock", () => {
    // Outer holes of five units: 5 × 2438 − (2438 − 2259) = 12 011 mm; the 40 ft unit's: 11 985. (12 011 − 11 985)/2 = 13.
    expect((5 * 2438 - (2438 - 2259) - 11985) / 2).toBe(13);
    const row = [0, 1, 2, 3, 4].map((at) => ({ id: `g${at}`, type: "1CCC" as const, x: 0, y: at * 2438 }));
    const turned = { id: "t", type: "1AAA" as const, x: -1500, y: 2 * 2438 + 60, z: high, turn: 90 };
    const best = alignments(schemeOf({ units: [...row, turned] }), "t").find(({ gap }) => gap === undefined);
    expect(best?.dyMm).toBe(-60);
    expect(best?.landings.map(({ acrossMm }) => acrossMm)).toEqual([13, 13]);
    expect(best?.landings.map(({ onId }) => onId).toSorted()).toEqual(["g0", "g4"]);
    expect(best?.kind).toBe("bearing without lock");
    expect(best?.onRails).toHaveLength(2);
  });

  it("puts a unit drawn 300 mm off back on all four corners of the one below, where a stock lock enters", () => {
    const below = { id: "g", type: "1AAA" as const, x: 0, y: 0 };
    const scheme = schemeOf({
      units: [below, { ...below, id: "f", x: 300, y: -40, z: high }],
      pads: padsUnder(below),
    });
    const [best] = alignments(scheme, "f");
    expect(best).toMatchObject({ dxMm: -300, dyMm: 40, kind: "lock", onRails: [] });
    expect(best?.landings).toHaveLength(4);
    expect(best?.gap).toBeUndefined();
  });

  it("puts a 40 ft unit end to end on two 20 ft ones: 2 × 5853 + (6058 − 5853) + gap = 11 985 needs a gap of 74 mm", () => {
    // Outer holes of two 20 ft units end to end: 2 × 6058 − (6058 − 5853) + gap = 11 911 + gap.
    expect(11985 - (2 * 6058 - (6058 - 5853))).toBe(74);
    const scheme = schemeOf({
      units: [
        { id: "a", type: "1CCC", x: 0, y: 0 },
        { id: "b", type: "1CCC", x: 6058, y: 0 },
        { id: "f", type: "1AAA", x: 3029, y: 0, z: high },
      ],
    });
    const [best] = alignments(scheme, "f");
    expect(best?.gap).toMatchObject({ nowMm: 0, neededMm: 74 });
    expect(best?.landings).toHaveLength(4);
    expect(best?.kind).toBe("lock");
  });

  it("never moves a unit below into another, nor the unit itself into one beside it", () => {
    const scheme = schemeOf({
      units: [
        { id: "a", type: "1CCC", x: 0, y: 0 },
        { id: "b", type: "1CCC", x: 6058, y: 0 },
        { id: "c", type: "1CCC", x: 2 * 6058 + 50, y: 0 },
        { id: "f", type: "1AAA", x: 3029, y: 0, z: high },
      ],
    });
    // b may not move 74 mm east: c stands 50 mm from it; a may move west.
    const moves = alignments(scheme, "f").flatMap(({ gap }) => (gap?.neededMm === 74 ? [gap.move] : []));
    expect(moves.map(({ id, dxMm }) => `${id} ${dxMm}`)).toContain("a -74");
    expect(moves.map(({ id }) => id)).not.toContain("b");
  });

  it("has nothing to say of a unit on the ground, nor of one that is not there", () => {
    const scheme = schemeOf({ units: [{ id: "a", type: "1CCC", x: 0, y: 0 }] });
    expect(alignments(scheme, "a")).toEqual([]);
    expect(alignments(scheme, "z")).toEqual([]);
  });
});
