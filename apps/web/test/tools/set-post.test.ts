import { placeContainer } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { setPost, snapPost } from "../../src/tools/set-post.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const g1 = unitAt("g1", "G1", 0, 0, 0);
const f1 = unitAt("f1", "F1", 3000, 0, 2896);
const t1 = unitAt("t1", "T1", 0, -3000, 5792, 90);
const scheme = schemeOf([g1, f1, t1]);
const apart = (a: { xMm: number; yMm: number }, b: { xMm: number; yMm: number }) =>
  Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);

describe("setPost(scheme, at, unit)", () => {
  it("runs from the ground to the underside of the unit it holds, on a pad of its own", () => {
    expect(setPost(scheme, { xMm: 0, yMm: -8000 }, "t1")).toMatchObject([
      { kind: "post.set", post: { tag: "P1", baseZUm: 0, topZUm: 5_792_000 } },
      { kind: "pad.set", pad: { xUm: 0, yUm: -8_000_000, topZUm: 0 } },
    ]);
  });

  it("without a unit holds the lowest one above the ground there", () => {
    expect(setPost(scheme, { xMm: 8000, yMm: 0 })).toMatchObject([
      { post: { topZUm: 2_896_000 } },
      { kind: "pad.set" },
    ]);
  });

  it("is nothing where no unit is above the ground", () => {
    expect(setPost(scheme, { xMm: 0, yMm: 50_000 })).toBeNull();
    expect(setPost(schemeOf([g1]), { xMm: 0, yMm: 0 })).toBeNull();
  });

  it("sets no second pad where one lies already", () => {
    const [, pad] = setPost(scheme, { xMm: 0, yMm: -8000 }, "t1") ?? [];
    if (pad?.kind !== "pad.set") throw new Error("a pad was expected");
    expect(setPost(schemeOf([g1, f1, t1], [pad.pad]), { xMm: 0, yMm: -8000 }, "t1")).toHaveLength(1);
  });
});

describe("snapPost(scheme, assessment, at, reach, apart, unit)", () => {
  it("is drawn under the bottom fitting of the unit it holds when within reach", () => {
    const [foot] = placeContainer(t1).bottomFittings;
    if (foot === undefined) throw new Error("a unit has fittings");
    const at = { xMm: foot.at.xMm + 90, yMm: foot.at.yMm - 60 };
    expect(snapPost(scheme, null, at, 200, apart, "t1")).toMatchObject({ xMm: foot.at.xMm, yMm: foot.at.yMm });
    expect(snapPost(scheme, null, at, 20, apart, "t1")).toEqual(at);
  });
});
