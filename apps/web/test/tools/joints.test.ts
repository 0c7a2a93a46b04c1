import { applyOperations, Beam, Lock, Seat, Tie } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { bearingPlaces } from "../../src/tools/bearing-places.ts";
import { newBeam } from "../../src/tools/new-beam.ts";
import { bareFittings, newLocks } from "../../src/tools/new-lock.ts";
import { bareBearings, newSeat } from "../../src/tools/new-seat.ts";
import { neighboursOf, newTie } from "../../src/tools/new-tie.ts";
import { placeUnit } from "../../src/tools/place-unit.ts";
import { beam, furnished } from "../support/furnished.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const g1 = unitAt("g1", "G1", 0, 0, 0);
const g2 = unitAt("g2", "G2", 0, 2438, 0);
const across = unitAt("f1", "F1", 0, 1219, 2896, 90);

describe("bearingPlaces(scheme, unit)", () => {
  it("finds the four crossings of each unit under one turned across two, packed by 6 + 12.5 = 18.5 mm", () => {
    const places = bearingPlaces(schemeOf([g1, g2, across]), "f1");
    expect(places).toHaveLength(8);
    expect(places.filter(({ lowerId }) => lowerId === "g1")).toHaveLength(4);
    for (const { gapMm } of places) expect(gapMm).toBeCloseTo(18.5, 6);
    // The rails cross inside both widths: no place farther from the middle than half a width of 2438 mm.
    for (const { at } of places) expect(Math.abs(at.xMm)).toBeLessThan(1219);
  });

  it("finds none where corner stands on corner, and none on a unit that is not below", () => {
    expect(bearingPlaces(schemeOf([g1, unitAt("f1", "F1", 0, 0, 2896)]), "f1")).toEqual([]);
    expect(bearingPlaces(schemeOf([g1, g2]), "g1")).toEqual([]);
  });

  it("finds the corners of a shifted unit on the rails of the one below, packed by the 6 mm its fittings stand proud", () => {
    const places = bearingPlaces(schemeOf([g1, unitAt("f1", "F1", 3000, 0, 2896)]), "f1");
    const west = places.filter(({ at }) => at.xMm < 0);
    expect(west).toHaveLength(2);
    // Hole centres of a 40 ft unit are 11 985 mm apart (ISO 1161): 3000 − 11 985 / 2 = −2992.5.
    for (const { at, gapMm } of west) {
      expect(at.xMm).toBeCloseTo(-2992.5, 1);
      expect(gapMm).toBeCloseTo(6, 6);
    }
  });

  it("finds the crossings over a beam whose upper face lies 12.5 mm under the rails", () => {
    const scheme = { ...schemeOf([across]), beams: [beam] };
    const places = bearingPlaces(scheme, "f1").filter(({ lowerId }) => lowerId === "m1");
    expect(places).toHaveLength(2);
    for (const { at, gapMm } of places) expect([at.yMm, gapMm]).toEqual([-3000, 12.5]);
  });
});

describe("newSeat(scheme, place)", () => {
  it("is a seat the schema takes, its packing filling the gap; where one stands none is offered", () => {
    const scheme = schemeOf([g1, g2, across]);
    const [first] = bareBearings(scheme, "f1");
    if (first === undefined) throw new Error("a crossing was expected");
    const seat = newSeat(scheme, first);
    expect(Seat.parse(seat)).toMatchObject({ tag: "S1", upperId: "f1", packingUm: 18_500, heldDown: false });
    const drawn = applyOperations(scheme, [{ kind: "seat.set", seat }]);
    if (!drawn.ok) throw new Error("the seat is set");
    expect(bareBearings(drawn.scheme, "f1")).toHaveLength(7);
  });
});

describe("newTie(scheme, unit, neighbour, place, height)", () => {
  it("stands in the middle of the gap of units 40 mm apart, at the top rails", () => {
    const scheme = schemeOf([g1, unitAt("g2", "G2", 1000, 2478, 0)]);
    const [found, ...others] = neighboursOf(scheme, g1);
    if (found === undefined) throw new Error("a neighbour was expected");
    expect([found.id, others.length]).toEqual(["g2", 0]);
    expect(found.gapMm).toBeCloseTo(40, 6);
    const tie = newTie(scheme, g1, found, "middle", "at the top rails");
    // Half a width and half the gap: 1219 + 20 mm; both units are there from −5096 to 6096, the middle of which is 500.
    expect(Tie.parse(tie)).toMatchObject({ aId: "g1", bId: "g2", xUm: 500_000, yUm: 1_239_000 });
    expect(tie.zUm).toBeLessThan(2_896_000);
    expect(newTie(scheme, g1, found, "west or south end", "at the top rails").xUm).toBe(-4_796_000);
  });

  it("finds a unit at the end of another, and none a step away or above", () => {
    const end = unitAt("g2", "G2", 12_192, 0, 0);
    expect(neighboursOf(schemeOf([g1, end]), g1).map(({ id }) => id)).toEqual(["g2"]);
    expect(neighboursOf(schemeOf([g1, unitAt("g2", "G2", 0, 2700, 0)]), g1)).toEqual([]);
    expect(neighboursOf(schemeOf([g1, unitAt("f1", "F1", 0, 0, 2896)]), g1)).toEqual([]);
  });
});

describe("bareFittings(scheme, unit)", () => {
  it("offers a lock on fittings, a hold-down on pads, a made connection elsewhere", () => {
    const placed = applyOperations(schemeOf([]), placeUnit(schemeOf([]), g1));
    if (!placed.ok) throw new Error("the unit is set");
    const f1 = unitAt("f1", "F1", 0, 0, 2896);
    const stacked = { ...placed.scheme, containers: [f1, ...placed.scheme.containers] };
    expect(bareFittings(stacked, g1).map(({ kind }) => kind)).toEqual(Array(4).fill("hold-down"));
    expect(bareFittings(stacked, f1).map(({ kind }) => kind)).toEqual(Array(4).fill("lock"));
    expect(bareFittings(furnished, across).map(({ kind }) => kind)).toEqual(Array(4).fill("made connection"));
  });

  it("gives all four corners of a unit a lock with a label of its own, and none to one that has it", () => {
    const locks = newLocks(furnished, g1);
    expect(locks.map(({ tag }) => tag)).toEqual(["L2", "L3", "L4"]);
    for (const lock of locks) expect(Lock.safeParse(lock).success).toBe(true);
  });
});

describe("newBeam(scheme, from, to)", () => {
  it("runs between two points, and is nothing between two that are one", () => {
    const made = newBeam(furnished, { xMm: 0, yMm: 0, zMm: 2896 }, { xMm: 3000, yMm: 0, zMm: 2896 });
    expect(Beam.parse(made)).toMatchObject({ tag: "BM2", from: { xUm: 0 }, to: { xUm: 3_000_000, zUm: 2_896_000 } });
    expect(newBeam(furnished, { xMm: 0, yMm: 0, zMm: 0 }, { xMm: 0, yMm: 0, zMm: 2896 })).toBeNull();
  });
});
