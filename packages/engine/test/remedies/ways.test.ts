import { describe, expect, it } from "vitest";
import type { Mark, Scheme } from "@cornerway/schema";
import { assess } from "../../src/assess.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { Generator, Trial } from "../../src/remedies/trial.ts";
import { heavierFrames } from "../../src/remedies/ways/heavier-frames.ts";
import { otherUnit } from "../../src/remedies/ways/other-unit.ts";
import { ties } from "../../src/remedies/ways/ties.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";
import { drawn } from "./listed.ts";

const lower = { id: "g", type: "1CCC" as const, x: 0, y: 0 };
const beside = { id: "h", type: "1CCC" as const, x: 0, y: 2488 };
const [anyMark] = assess(schemeOf({ units: [lower], pads: padsUnder(lower) })).marks;

/** A way asked for a mark on these elements. */
function waysOf(way: Generator, scheme: Scheme, elements: string[], fact?: Mark["fact"]): readonly Trial[] {
  if (anyMark === undefined) throw new Error("a unit on pads has a mark");
  return way({ scheme, analysis: analyse(scheme), mark: { ...anyMark, elements, ...(fact && { fact }) } }).flat();
}

describe("ties", () => {
  const two = schemeOf({ units: [lower, beside], pads: [...padsUnder(lower), ...padsUnder(beside)] });

  it("join a unit to the one beside it at two top fittings, then at the bottom as well, in the middle of the gap of 50 mm", () => {
    const [top, both] = waysOf(ties, two, ["g"]);
    expect(top?.change).toEqual({ kind: "ties", unitIds: ["g", "h"], places: 2 });
    expect(both?.change).toEqual({ kind: "ties", unitIds: ["g", "h"], places: 4 });
    // half of 2438 mm, and half of the gap
    for (const operation of both?.operations ?? [])
      expect(operation).toMatchObject({ kind: "tie.set", tie: { yUm: (1219 + 25) * 1000 } });
  });

  it("serve where they are drawn", () => {
    const [, both] = waysOf(ties, two, ["g"]);
    const { marks } = assess(drawn(two, both?.operations ?? []));
    expect(marks.filter(({ fact }) => fact.kind === "tie-joins")).toHaveLength(4);
    expect(marks.filter(({ fact }) => fact.kind === "tie-cannot-serve")).toEqual([]);
  });

  it("are none where nothing stands beside", () => {
    expect(waysOf(ties, schemeOf({ units: [lower], pads: padsUnder(lower) }), ["g"])).toEqual([]);
  });
});

describe("heavier frames", () => {
  const door = { id: "d", in: "g", face: "right" as const, use: "door" as const, at: 1500, sill: 180, width: 1000 };
  const scheme = schemeOf({ units: [lower], pads: padsUnder(lower), cuts: [{ ...door, height: 2200 }] });
  const over = (place: string): Mark["fact"] => ({
    kind: "overstressed",
    more: 0,
    parts: [{ partId: `g jamb ${place}`, part: "jamb", place, check: "weld", utilisation: 1.4, run: "1.4D" }],
  });

  it("are drawn for the framed openings of the wall whose bars are beyond their strength, ever heavier", () => {
    const found = waysOf(heavierFrames, scheme, ["g"], over("right at 2.40 m, ends of the stated weld"));
    expect(
      found.map(({ change }) => (change.kind === "frame opening" ? [change.openingIds, change.header] : [])),
    ).toEqual([
      [["d"], "HSS6x4x3/8"],
      [["d"], "HSS8x4x3/8"],
    ]);
  });

  it("are none where the bars of another wall are", () => {
    expect(waysOf(heavierFrames, scheme, ["g"], over("left at 2.40 m"))).toEqual([]);
  });
});

describe("another unit", () => {
  // 40 ft 12,192 mm, 30 ft 9,125 mm, 20 ft 6,058 mm (ISO 668, from memory): the end that bears stays, so that the middle moves by
  // half of what the unit is shorter: (12,192 − 9,125)/2 = 1,533.5 and (12,192 − 6,058)/2 = 3,067 mm.
  it("is a shorter one of the same height whose bearing end stays", () => {
    const scheme = schemeOf({
      units: [lower, { id: "t", type: "1AAA", x: 4000, y: 0, z: 2896 }],
      pads: padsUnder(lower),
    });
    const found = waysOf(otherUnit, scheme, ["t"]);
    const after = found.flatMap(({ operations }) =>
      operations.flatMap((one) => (one.kind === "container.change" ? [[one.container.type, one.container.xUm]] : [])),
    );
    expect(after).toEqual([
      ["1BBB", (4000 - 1533.5) * 1000],
      ["1CCC", (4000 - 3067) * 1000],
    ]);
  });
});
