import { faceFrame, placeContainer, pointOnFace } from "@cornerway/engine";
import { applyOperations, faces, type Container, type Opening, type Operation, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { tooMany } from "../../src/tools/act-size.ts";
import { copyGroup } from "../../src/tools/copy-group.ts";
import { layElement } from "../../src/tools/lay-element.ts";
import { layGroup } from "../../src/tools/lay-group.ts";
import { mirroredAt, shiftedBy, turnedAbout } from "../../src/tools/laying.ts";
import { placeUnit } from "../../src/tools/place-unit.ts";
import { askedAbout, removeElements } from "../../src/tools/remove-elements.ts";
import { DraftAct, emptyScheme, mostOperations } from "@cornerway/schema";
import { furnished, opening } from "../support/furnished.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const after = (scheme: Scheme, operations: readonly Operation[]): Scheme => {
  const applied = applyOperations(scheme, operations);
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusal));
  return applied.scheme;
};

/** The four corners of an opening in the site, in mm, in no order. */
function cornersOf(unit: Container, { face, offsetUm, sillUm, widthUm, heightUm }: Opening): string[] {
  const frame = faceFrame(placeContainer(unit), face);
  const [u0, u1] = [offsetUm / 1000, (offsetUm + widthUm) / 1000];
  const [v0, v1] = [sillUm / 1000, (sillUm + heightUm) / 1000];
  return [
    pointOnFace(frame, u0, v0),
    pointOnFace(frame, u1, v0),
    pointOnFace(frame, u0, v1),
    pointOnFace(frame, u1, v1),
  ]
    .map(({ xMm, yMm, zMm }) => [xMm, yMm, zMm].map((mm) => Math.round(mm * 100) / 100 + 0).join())
    .toSorted();
}

describe("mirroredAt(line, at)", () => {
  it("turns the door end round: a unit with its doors to the east has them to the west, 9 m beyond the line", () => {
    const unit = unitAt("g1", "G1", 1000, 500, 0);
    // 2 × 10.000 − 1.000 = 19.000 m east; east (0°) mirrors to west (180°).
    expect(layElement(schemeOf([unit]), "containers", unit, mirroredAt("north–south", 10_000_000))).toMatchObject({
      xUm: 19_000_000,
      yUm: 500_000,
      turnMdeg: 180_000,
    });
    // About an east–west line at 2 m north: 2 × 2.000 − 0.500 = 3.500 m; 30° mirrors to −30°, which is 330°.
    expect(
      layElement(schemeOf([unit]), "containers", { ...unit, turnMdeg: 30_000 }, mirroredAt("east–west", 2_000_000)),
    ).toMatchObject({ xUm: 1_000_000, yUm: 3_500_000, turnMdeg: 330_000 });
  });

  it("cuts on the left what was cut on the right, as far from the front end", () => {
    const laid = layElement(furnished, "openings", opening, mirroredAt("north–south", 0));
    expect(laid).toMatchObject({ face: "left", offsetUm: 3_000_000, sillUm: 900_000 });
  });

  it("measures what is cut in an end from the other side: 2.438 − 0.300 − 0.900 = 1.238 m", () => {
    const end: Opening = { ...opening, face: "front", offsetUm: 300_000, widthUm: 900_000 };
    expect(layElement(furnished, "openings", end, mirroredAt("east–west", 0)).offsetUm).toBe(1_238_000);
  });

  it("puts every opening on every face where the mirror has it, for units turned by any angle", () => {
    for (const face of faces)
      for (const turnDeg of [0, 30, 90, 200.5]) {
        const unit = unitAt("g1", "G1", 1234, -987, 0, turnDeg);
        const cut: Opening = {
          ...opening,
          face,
          offsetUm: 310_000,
          sillUm: 420_000,
          widthUm: 900_000,
          heightUm: 700_000,
        };
        const scheme = { ...schemeOf([unit]), openings: [cut] };
        const laying = mirroredAt("north–south", 5_000_000);
        const mirrored = cornersOf(
          layElement(scheme, "containers", unit, laying),
          layElement(scheme, "openings", cut, laying),
        );
        const expected = cornersOf(unit, cut)
          .map((corner) => {
            const [x = 0, y = 0, z = 0] = corner.split(",").map(Number);
            return [Math.round((10_000 - x) * 100) / 100 + 0, y, z].join();
          })
          .toSorted();
        expect(mirrored, `${face} at ${turnDeg}°`).toEqual(expected);
      }
  });

  it("gives a load on the left of a floor to the right, its sideways part the other way", () => {
    const load = {
      id: "q1",
      tag: "Q1",
      containerId: "g1",
      surface: "floor",
      case: "plant",
      note: "Tank",
      shape: "point",
      xUm: 2_000_000,
      yUm: 400_000,
      downN: 5000,
      alongXN: 100,
      alongYN: 200,
    } as const;
    // 2.438 − 0.400 = 2.038 m from the right side.
    expect(layElement(furnished, "freeLoads", load, mirroredAt("north–south", 0))).toMatchObject({
      xUm: 2_000_000,
      yUm: 2_038_000,
      alongXN: 100,
      alongYN: -200,
    });
  });
});

describe("turnedAbout(centre, by)", () => {
  it("carries a place round by exact quarters", () => {
    const { place, turn } = turnedAbout({ xUm: 1_000_000, yUm: 0 }, 90_000);
    // One metre east of the centre comes to one metre north of it.
    expect(place({ xUm: 2_000_000, yUm: 0 })).toEqual({ xUm: 1_000_000, yUm: 1_000_000 });
    expect(turn(300_000)).toBe(30_000);
  });
});

describe("layGroup(scheme, ids, laying)", () => {
  it("shifts units together with the joints among them; a joint to something that stays is left", () => {
    const moved = after(furnished, layGroup(furnished, ["g1", "g2"], shiftedBy(1_000_000, 0)));
    expect(moved.containers.filter(({ tag }) => tag !== "F1").map(({ xUm }) => xUm)).toEqual([1_000_000, 1_000_000]);
    expect(moved.ties[0]?.xUm).toBe(1_000_000);
    expect(moved.seats[0]?.xUm).toBe(0);
    expect(moved.openings).toEqual(furnished.openings);
  });

  it("takes the pads of the whole group along and sets no others", () => {
    const one = after(emptyScheme, placeUnit(emptyScheme, unitAt("g1", "G1", 0, 0, 0)));
    const two = after(one, placeUnit(one, unitAt("g2", "G2", 0, 2438, 0)));
    const moved = after(two, layGroup(two, ["g1", "g2"], shiftedBy(3_000_000, 0)));
    expect(moved.pads.map(({ id }) => id)).toEqual(two.pads.map(({ id }) => id));
    expect(moved.pads.map(({ xUm }, at) => xUm - (two.pads[at]?.xUm ?? 0))).toEqual(two.pads.map(() => 3_000_000));
  });

  it("mirrors in place: units, cuts and joints, and a second mirror brings the first scheme back", () => {
    const laying = mirroredAt("north–south", 700_000);
    const ids = ["f1", "g1", "g2", "m1"];
    const once = after({ ...furnished, locks: [] }, layGroup({ ...furnished, locks: [] }, ids, laying));
    expect(once.openings[0]?.face).toBe("left");
    expect(once.beams[0]?.from.xUm).toBe(3_400_000);
    const pads = { ...once, pads: [] };
    expect({ ...after(pads, layGroup(pads, ids, laying)), pads: [] }).toEqual({ ...furnished, locks: [] });
  });
});

describe("copyGroup(scheme, ids, layings)", () => {
  it("copies units with their cuts and the joints among them under fresh ids and labels, in one act", () => {
    const copied = after(furnished, copyGroup(furnished, ["f1", "g1", "g2"], [shiftedBy(20_000_000, 0)]));
    expect(copied.containers.map(({ tag }) => tag).toSorted()).toEqual(["F1", "F2", "G1", "G2", "G3", "G4"]);
    const fresh = copied.openings.find(({ tag }) => tag === "W2");
    const unit = copied.containers.find(({ id }) => id === fresh?.containerId);
    expect(unit).toMatchObject({ xUm: 20_000_000, yUm: 0 });
    expect(copied.seats).toHaveLength(2);
    expect(copied.ties).toHaveLength(2);
    expect(copied.locks.map(({ tag }) => tag).toSorted()).toEqual(["L1", "L2"]);
    const seat = copied.seats.find(({ tag }) => tag === "S2");
    expect(copied.containers.find(({ id }) => id === seat?.upperId)?.tag).toBe("F2");
  });

  it("leaves out a joint to something that is not copied", () => {
    const copied = after(furnished, copyGroup(furnished, ["g1"], [shiftedBy(20_000_000, 0)]));
    expect([copied.seats.length, copied.ties.length, copied.locks.length]).toEqual([1, 1, 2]);
  });

  it("arrays a unit so many times, step by step, each on pads of the size of the first", () => {
    const one = after(emptyScheme, placeUnit(emptyScheme, unitAt("g1", "G1", 0, 0, 0)));
    const wide = { ...one, pads: one.pads.map((pad) => ({ ...pad, lengthUm: 777_000 })) };
    const array = [1, 2, 3].map((step) => shiftedBy(0, step * 3_000_000));
    const copied = after(wide, copyGroup(wide, ["g1"], array));
    expect(copied.containers.map(({ yUm }) => yUm).toSorted((a, b) => a - b)).toEqual([0, 3e6, 6e6, 9e6]);
    expect(copied.pads).toHaveLength(16);
    expect(copied.pads.every(({ lengthUm }) => lengthUm === 777_000)).toBe(true);
    expect(copied.loads).toHaveLength(8);
  });

  it("names a unit copied upwards after its storey", () => {
    const one = schemeOf([unitAt("g1", "G1", 0, 0, 0)]);
    const tags = after(one, copyGroup(one, ["g1"], [shiftedBy(0, 0, 2_896_000)])).containers.map(({ tag }) => tag);
    expect(tags.toSorted()).toEqual(["F1", "G1"]);
  });
});

describe("tooMany(operations)", () => {
  const many = (count: number) =>
    Array.from({ length: count }, (_, at): Operation => ({ kind: "container.remove", id: `u${at}` }));

  it("tells where the schema of an act would refuse, and not before", () => {
    const act = (count: number) => ({ id: crypto.randomUUID(), base: 0, operations: many(count) });
    expect(DraftAct.safeParse(act(mostOperations)).success).toBe(true);
    expect(DraftAct.safeParse(act(mostOperations + 1)).success).toBe(false);
    expect(tooMany(many(mostOperations))).toBeNull();
    expect(tooMany(many(mostOperations + 1))).toMatch(/^That is 5001 changes, and one act holds 5000/);
  });
});

describe("removeElements(scheme, ids)", () => {
  it("names what hangs on a unit, and takes it away in one act that its inverse brings back", () => {
    expect(askedAbout(furnished, ["g1"]).toSorted()).toEqual(["k1", "o1", "s1", "t1"]);
    const taken = applyOperations(furnished, removeElements(furnished, ["g1"]));
    if (!taken.ok) throw new Error("the unit is taken away");
    expect(taken.scheme.containers.map(({ id }) => id)).toEqual(["f1", "g2"]);
    expect([taken.scheme.seats, taken.scheme.ties, taken.scheme.locks, taken.scheme.openings].flat()).toEqual([]);
    expect(after(taken.scheme, taken.inverse)).toEqual(furnished);
  });

  it("asks nothing about the loads every floor has", () => {
    const one = after(emptyScheme, placeUnit(emptyScheme, unitAt("g1", "G1", 0, 0, 0)));
    expect(askedAbout(one, ["g1"])).toEqual([]);
    expect(after(one, removeElements(one, ["g1"]))).toEqual(emptyScheme);
  });
});
