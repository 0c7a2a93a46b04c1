import { emptyScheme, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { detailsOf } from "../../src/drawing/detail-model.ts";
import { placeContainer } from "../../src/geometry/place.ts";

const unit = (id: string, zMm: number): Scheme["containers"][number] => ({
  ...{ id, tag: id.toUpperCase(), type: "1AAA", turnMdeg: 0, xUm: 0, yUm: 0, zUm: zMm * 1000 },
});
const section = "HSS4x4x1/4";
const scheme: Scheme = {
  ...emptyScheme,
  containers: [unit("f1", 2896), unit("g1", 0)],
  pads: [
    {
      ...{ id: "n1", tag: "N1", xUm: 8_000_000, yUm: 0, topZUm: 0, turnMdeg: 0 },
      ...{ lengthUm: 600_000, widthUm: 600_000, depthUm: 400_000 },
    },
  ],
  posts: [
    { id: "p1", tag: "P1", xUm: 6_000_000, yUm: 0, baseZUm: 0, topZUm: 2_896_000, turnMdeg: 0, section },
    { id: "p2", tag: "P2", xUm: 8_000_000, yUm: 0, baseZUm: 0, topZUm: 2_000_000, turnMdeg: 0, section },
  ],
  openings: [
    {
      ...{ id: "w1", tag: "W1", containerId: "g1", face: "right", use: "window", framed: true },
      ...{ offsetUm: 3_000_000, sillUm: 900_000, widthUm: 1_000_000, heightUm: 1_000_000 },
      framing: { jamb: "HSS3x3x3/16", header: "HSS3x3x3/16", sill: "HSS3x3x3/16" },
    },
  ],
  seats: [
    {
      ...{ id: "s1", tag: "S1", upperId: "f1", lowerId: "g1", xUm: 0, yUm: -1_219_000 },
      ...{ lengthUm: 200_000, widthUm: 100_000, packingUm: 12_000, heldDown: false },
    },
  ],
};

describe("detailsOf(scheme, id)", () => {
  it("draws a tube of 4 in as two walls 101.6 mm apart over all, of 0.93 × 1/4 in (AISC 360 B4.2, from memory)", () => {
    const [head] = detailsOf(scheme, "p1");
    const walls = head?.parts.filter(({ name }) => name === section) ?? [];
    expect(walls.map(({ u0Mm, u1Mm }) => [u0Mm, u1Mm].map((at) => Math.round(at * 10) / 10))).toEqual([
      [-50.8, -44.9],
      [44.9, 50.8],
    ]);
  });

  it("puts the bottom rail of the unit that stands on a head over it, and a pad of its own size under a foot", () => {
    const [head] = detailsOf(scheme, "p1");
    expect(head?.parts.some(({ name, z0Mm }) => name === "bottom rail" && z0Mm >= 0)).toBe(true);
    const [free, foot] = detailsOf(scheme, "p2");
    expect(free?.parts.every(({ what }) => what === "added steel")).toBe(true);
    expect(foot?.parts.find(({ what }) => what === "concrete")).toEqual({
      ...{ what: "concrete", name: "N1", u0Mm: -300, u1Mm: 300, z0Mm: -400, z1Mm: 0 },
    });
  });

  it("stands a post on the plate that is checked, 50 mm out all round and 20 mm thick, welded to it", () => {
    const [, foot] = detailsOf(scheme, "p2");
    // by hand: HSS 4 in is 101.6 mm; 101.6 + 2 × 50 = 201.6
    const plate = foot?.parts.find(({ what }) => what === "plate");
    expect(plate).toMatchObject({ name: "stated plate 202×202×20", u0Mm: -100.8, u1Mm: 100.8, z0Mm: 0, z1Mm: 20 });
    expect(foot?.welds).toEqual([{ uMm: 50.8, zMm: 20, legMm: 5 }]);
  });

  it("caps a post with the same plate under the unit it holds, welded below, and none where it holds nothing", () => {
    const [head, foot] = detailsOf(scheme, "p1");
    const plate = head?.parts.find(({ what }) => what === "plate");
    expect(plate).toMatchObject({ name: "stated plate 202×202×20", u0Mm: -100.8, u1Mm: 100.8, z0Mm: -20, z1Mm: 0 });
    expect(head?.parts.filter(({ name }) => name === section).map(({ z1Mm }) => z1Mm)).toEqual([-20, -20]);
    expect(head?.welds).toEqual([{ uMm: 50.8, zMm: -20, legMm: 5 }]);
    expect(foot?.parts.some(({ what }) => what === "plate")).toBe(false); // P1 stands on no pad
    const [free] = detailsOf(scheme, "p2");
    expect(free?.welds).toEqual([]);
  });

  it("shows the anchors of a pad only where a hold-down is drawn on it, as deep as its concrete allows", () => {
    const under = { ...unit("g1", 0), xUm: 8_000_000 - 5_853_500, yUm: -1_129_500 };
    const on = { ...scheme, containers: [under], locks: [] };
    const bare = detailsOf(on, "n1");
    expect(bare[0]?.parts.map(({ what }) => what)).toEqual(["concrete", "container steel"]);
    const lock = { id: "l1", tag: "L1", containerId: "g1", fitting: "door-left", kind: "hold-down" } as const;
    const held = detailsOf({ ...on, locks: [lock] }, "n1");
    // a pad of 400 mm leaves 325 mm under a head: the stated 150 mm govern
    expect(held[0]?.parts.filter(({ what }) => what === "anchor").map(({ u0Mm, z0Mm }) => [u0Mm, z0Mm])).toEqual([
      [-108, -150],
      [92, -150],
    ]);
  });

  it("lays a seat's packing between the rails it parts", () => {
    const [seat] = detailsOf(scheme, "s1");
    expect(seat?.parts.map(({ name }) => name)).toEqual(["top rail", "S1", "bottom rail"]);
    expect(seat?.heights).toEqual([{ fromMm: 0, toMm: 12, atMm: 50 }]);
  });

  it("frames an opening with its own header and sill, 3 in deep, away from the opening", () => {
    const [head, sill] = detailsOf(scheme, "w1");
    expect(
      Math.max(...(head?.parts ?? []).filter(({ what }) => what === "added steel").map(({ z1Mm }) => z1Mm)),
    ).toBeCloseTo(76.2, 6);
    expect(
      Math.min(...(sill?.parts ?? []).filter(({ what }) => what === "added steel").map(({ z0Mm }) => z0Mm)),
    ).toBeCloseTo(-76.2, 6);
  });

  it("has no sill where there is no room for one over the bottom rail, which then is the sill", () => {
    const window = scheme.openings.find(({ id }) => id === "w1");
    if (window === undefined) throw new Error("no window");
    // 1AAA: the sheet begins above the bottom rail; 20 mm over it is less than any tube of a frame
    const zone = placeContainer(unit("g1", 0)).dimensions.sheetZone(window.face);
    const low = { ...window, sillUm: Math.round((zone.v0 + 20) * 1000) };
    expect(detailsOf({ ...scheme, openings: [low] }, "w1").map(({ subject }) => subject)).toEqual(["head of opening"]);
  });

  it("has none for what brings no steel", () => {
    expect(detailsOf(scheme, "g1")).toEqual([]);
    expect(detailsOf(scheme, "nowhere")).toEqual([]);
  });
});
