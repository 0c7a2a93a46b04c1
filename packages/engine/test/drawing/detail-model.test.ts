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
    expect(foot?.welds).toEqual([{ uMm: 50.8, zMm: 20, legMm: 5, around: true }]);
  });

  it("caps a post with the same plate under the unit it holds, welded below, and none where it holds nothing", () => {
    const [head, foot] = detailsOf(scheme, "p1");
    const plate = head?.parts.find(({ what }) => what === "plate");
    expect(plate).toMatchObject({ name: "stated plate 202×202×20", u0Mm: -100.8, u1Mm: 100.8, z0Mm: -20, z1Mm: 0 });
    expect(head?.parts.filter(({ name }) => name === section).map(({ z1Mm }) => z1Mm)).toEqual([-20, -20]);
    expect(head?.welds).toEqual([{ uMm: 50.8, zMm: -20, legMm: 5, around: true }]);
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
    expect([...new Set(seat?.parts.map(({ name }) => name))]).toEqual(["top rail", "S1", "bottom rail"]);
    expect(seat?.heights).toEqual([{ fromMm: 0, toMm: 12, atMm: 50 }]);
  });

  it("frames an opening with its own header and sill, 3 in deep, away from the opening", () => {
    const [head, , sill] = detailsOf(scheme, "w1");
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
    expect(detailsOf({ ...scheme, openings: [low] }, "w1").map(({ subject }) => subject)).toEqual([
      "head of opening",
      "jamb of opening",
    ]);
  });

  it("cuts rails as they are pressed and rolled: a channel 162 × 48 × 30 × 4.5, a tube 60 × 60 × 3 (common practice)", () => {
    const [seat] = detailsOf(scheme, "s1");
    const sizes = (name: string) =>
      (seat?.parts ?? [])
        .filter((part) => part.name === name)
        .map(({ u0Mm, u1Mm, z0Mm, z1Mm }) => [
          Math.round((u1Mm - u0Mm) * 10) / 10,
          Math.round((z1Mm - z0Mm) * 10) / 10,
        ]);
    expect(sizes("bottom rail")).toEqual([
      [4.5, 162],
      [30, 4.5],
      [48, 4.5],
    ]);
    expect(sizes("top rail")).toEqual([
      [3, 60],
      [3, 60],
      [60, 3],
      [60, 3],
    ]);
  });

  it("stands a stiffener of its own thickness between the flanges of the rail that comes down, welded on both faces", () => {
    const [plain] = scheme.seats;
    if (plain === undefined) throw new Error("no seat");
    const stiffened = { ...scheme, seats: [{ ...plain, stiffenerUm: 8000 }] };
    expect(detailsOf(scheme, "s1").map(({ subject }) => subject)).toEqual(["seat"]);
    const [, along] = detailsOf(stiffened, "s1");
    const plate = along?.parts.find(({ name }) => name === "stiffener 8 mm");
    // by hand: 162 less two flanges of 4.5 is 153
    expect((plate?.z1Mm ?? 0) - (plate?.z0Mm ?? 0)).toBeCloseTo(153, 9);
    expect((plate?.u1Mm ?? 0) - (plate?.u0Mm ?? 0)).toBe(8);
    expect(along?.parts.find(({ name }) => name === "S1")).toMatchObject({ u0Mm: -100, u1Mm: 100, z0Mm: 0, z1Mm: 12 });
    expect(along?.welds).toMatchObject([{ uMm: 4, bothSides: true, around: false }]);
  });

  it("runs the folded sheet into a jamb at its true pitch and depth, welded from one side no heavier than it is thick", () => {
    const [, jamb] = detailsOf(scheme, "w1");
    const dimensions = placeContainer(unit("g1", 0)).dimensions;
    const t = dimensions.sheetThicknessMm.side;
    const sheet = jamb?.parts.find(({ outline }) => outline !== undefined);
    expect(sheet?.name).toBe(`sheet ${t} mm`);
    expect((sheet?.z1Mm ?? 0) - (sheet?.z0Mm ?? 0)).toBeCloseTo(dimensions.corrugationDepthMm.side + t, 9);
    expect(sheet?.u1Mm).toBeCloseTo(-76.2, 6); // 3 in: it ends at the jamb
    expect(jamb?.welds).toEqual([{ uMm: expect.closeTo(-76.2, 6), zMm: 0, legMm: Math.min(5, t), around: false }]);
  });

  describe("of what joins units", () => {
    const lock = (kind: "lock" | "made connection") => ({
      ...({ id: "l1", tag: "L1", containerId: "f1", fitting: "door-left", kind } as const),
    });

    it("shows a stock lock where it goes between two fittings and not in its shape", () => {
      const [joint] = detailsOf({ ...scheme, locks: [lock("lock")] }, "l1");
      // ISO 1161, from memory: 178 × 118 mm seen from the side; one on the other
      expect(joint?.parts.map(({ what, z0Mm, z1Mm }) => [what, z0Mm, z1Mm])).toEqual([
        ["container steel", -118, 0],
        ["container steel", 0, 118],
        ["device", -50, 50],
      ]);
      expect(joint?.welds).toEqual([]);
    });

    it("draws a made connection as the two plates of 10 mm it is checked with, 200 mm of 5 mm fillet each", () => {
      const [joint] = detailsOf({ ...scheme, locks: [lock("made connection")] }, "l1");
      expect(joint?.parts.filter(({ what }) => what === "plate").map(({ u0Mm, u1Mm }) => [u0Mm, u1Mm])).toEqual([
        [-99, -89],
        [89, 99],
      ]);
      expect(joint?.welds).toMatchObject([{ legMm: 5, lengthMm: 200, around: false }]);
    });

    it("has none for a lock over nothing", () => {
      const containers = scheme.containers.filter(({ id }) => id === "f1");
      expect(detailsOf({ ...scheme, containers, locks: [lock("lock")] }, "l1")).toEqual([]);
      const elsewhere = { ...unit("g1", 0), yUm: 10_000_000 };
      expect(detailsOf({ ...scheme, containers: [...containers, elsewhere], locks: [lock("lock")] }, "l1")).toEqual([]);
    });

    const beside = { ...unit("g2", 0), yUm: 2_488_000 };
    // 1AAA: 2.438 m wide, so that 50 mm are left between; its top side rail ends 2.896 m less what fittings are proud up
    const top = placeContainer(beside).dimensions;
    const zUm = Math.round((top.heightMm - top.proudOfRoofMm - 30) * 1000);
    const tie = { id: "t1", tag: "C1", aId: "g1", bId: "g2", xUm: 0, yUm: 1_244_000, zUm, carries: "in plan" } as const;
    const tied = { ...scheme, containers: [unit("g1", 0), beside], seats: [], posts: [] };

    it("lays the stated plate of a tie over both top rails, 300 mm across the gap and 10 mm thick, welded 150 mm at its edges", () => {
      const [joint] = detailsOf({ ...tied, ties: [tie] }, "t1");
      const plate = joint?.parts.find(({ what }) => what === "plate");
      expect(plate).toMatchObject({ name: "stated plate 150×10, level", u0Mm: -150, u1Mm: 150 });
      expect(plate?.z0Mm).toBeCloseTo(30, 6);
      expect(plate?.z1Mm).toBeCloseTo(40, 6);
      const rails = joint?.parts.filter(({ name }) => name === "top rail") ?? [];
      expect(Math.min(...rails.filter(({ u0Mm }) => u0Mm > 0).map(({ u0Mm }) => u0Mm))).toBeCloseTo(25, 6);
      expect(Math.max(...rails.filter(({ u1Mm }) => u1Mm < 0).map(({ u1Mm }) => u1Mm))).toBeCloseTo(-25, 6);
      expect(joint?.welds).toMatchObject([{ legMm: 5, lengthMm: 150, bothSides: true }]);
    });

    it("says of a tie that states its own stiffness only where it goes, and has none for one out of reach", () => {
      const [own] = detailsOf({ ...tied, ties: [{ ...tie, stiffnessNPerMm: 5000 }] }, "t1");
      expect(own?.parts.filter(({ what }) => what === "plate")).toEqual([]);
      expect(own?.welds).toEqual([]);
      expect(detailsOf({ ...tied, ties: [{ ...tie, yUm: 9_000_000 }] }, "t1")).toEqual([]);
    });
  });

  it("has none for what brings no steel", () => {
    expect(detailsOf(scheme, "g1")).toEqual([]);
    expect(detailsOf(scheme, "nowhere")).toEqual([]);
  });
});
