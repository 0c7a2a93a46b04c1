import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { collectionNames, emptyScheme, readScheme, Scheme, schemeVersion } from "../src/index.ts";

const padded = (n: number) => String(n).padStart(5, "0");
const containers = (count: number) =>
  Array.from({ length: count }, (_, n) => ({
    id: `c${padded(n)}`,
    tag: `C${n}`,
    type: "1CC",
    xUm: n,
    yUm: 0,
    zUm: 0,
    turnMdeg: 0,
  }));
const openings = (count: number) =>
  Array.from({ length: count }, (_, n) => ({
    ...{ id: `o${padded(n)}`, tag: `O${n}`, containerId: "c00000", face: "left", use: "window" },
    ...{ offsetUm: 0, sillUm: 0, widthUm: 1, heightUm: 1, framed: true },
  }));

const pointersOf = (value: unknown) => {
  const read = readScheme(value);
  return read.ok ? [] : read.fields.map(({ pointer }) => pointer);
};

describe("collectionNames", () => {
  it("are all lists of a scheme", () => {
    const lists = Object.entries(emptyScheme).filter(([, value]) => Array.isArray(value));
    expect([...collectionNames].sort()).toEqual(lists.map(([name]) => name).sort());
  });
});

describe("Scheme", () => {
  it("takes 500 containers and 5 000 openings, and not one more of either", () => {
    expect(Scheme.safeParse({ ...emptyScheme, containers: containers(500), openings: openings(5000) }).success).toBe(
      true,
    );
    expect(pointersOf({ ...emptyScheme, containers: containers(501) })).toEqual(["/containers"]);
    expect(pointersOf({ ...emptyScheme, containers: containers(1), openings: openings(5001) })).toEqual(["/openings"]);
  });

  it.each([
    ["a fraction of a micrometre", { xUm: 0.5 }, "/containers/0/xUm"],
    ["a place beyond 10 km", { xUm: 10_000_000_001 }, "/containers/0/xUm"],
    ["a full turn", { turnMdeg: 360_000 }, "/containers/0/turnMdeg"],
    ["a turn backwards", { turnMdeg: -1 }, "/containers/0/turnMdeg"],
    ["an unknown type", { type: "2CC" }, "/containers/0/type"],
    ["an id in capitals", { id: "C1" }, "/containers/0/id"],
    ["text for a number", { yUm: "0" }, "/containers/0/yUm"],
  ])("names the place of %s", (_what, more, pointer) => {
    expect(pointersOf({ ...emptyScheme, containers: [{ ...containers(1)[0], ...more }] })).toEqual([pointer]);
  });

  it("refuses unknown fields, and collections that are not sorted by id", () => {
    expect(pointersOf({ ...emptyScheme, containers: [{ ...containers(1)[0], colour: "red" }] })).toEqual([
      "/containers/0",
    ]);
    expect(pointersOf({ ...emptyScheme, notes: [] })).toEqual([""]);
    expect(pointersOf({ ...emptyScheme, containers: containers(2).reverse() })).toEqual(["/containers"]);
  });
});

describe("readScheme", () => {
  it("reads the demo scheme", () => {
    const text = readFileSync(path.resolve(import.meta.dirname, "../../../shared/demo/scheme.json"), "utf8");
    expect(readScheme(JSON.parse(text)).ok).toBe(true);
  });

  it("reads version 1: the same elements, nothing joined, nothing stated of the place", () => {
    const text = readFileSync(path.resolve(import.meta.dirname, "fixtures/scheme-version-1.json"), "utf8");
    const older: Record<string, unknown> = JSON.parse(text);
    expect(older["version"]).toBe(1);
    const read = readScheme(older);
    expect(read).toMatchObject({ ok: true, scheme: { ...older, version: 2, locks: [], basis: { hazards: null } } });
  });

  it("names what a joint hangs on that is not there, or is not of the right kind", () => {
    const [a, b] = containers(2);
    const post = { id: "p1", tag: "P1", xUm: 0, yUm: 0, baseZUm: 0, topZUm: 1, turnMdeg: 0, section: "HSS 4x4x1/4" };
    const seat = { id: "s1", tag: "S1", upperId: "c00000", lowerId: "p1", xUm: 0, yUm: 0 };
    const plate = { lengthUm: 1, widthUm: 1, packingUm: 1, heldDown: false };
    const tie = { id: "t1", tag: "T1", aId: "c00001", bId: "c7", xUm: 0, yUm: 0, zUm: 0, carries: "in plan" };
    const scheme = { ...emptyScheme, containers: [a, b], posts: [post] };
    expect(pointersOf({ ...scheme, seats: [{ ...seat, ...plate }], ties: [tie] })).toEqual([
      "/seats/0/lowerId",
      "/ties/0/bId",
    ]);
  });

  it.each([[0], [schemeVersion + 1], ["1"], [null], [undefined]])(
    "says that version %j is not known, and which are",
    (version) => {
      const read = readScheme({ ...emptyScheme, version });
      expect(read).toMatchObject({ ok: false, code: "version-unknown", fields: [{ pointer: "/version" }] });
    },
  );

  it.each([[null], [[]], ["{}"], [7]])("says that %j is no scheme", (value) => {
    expect(readScheme(value)).toMatchObject({ ok: false, code: "body-invalid", fields: [{ pointer: "" }] });
  });

  it("names an id given to two elements, a label given to two, and a unit that is not there", () => {
    const [unit] = containers(1);
    const [window] = openings(1);
    const withOpening = (more: object) =>
      pointersOf({ ...emptyScheme, containers: [unit], openings: [{ ...window, ...more }] });
    expect(withOpening({})).toEqual([]);
    expect(withOpening({ id: "c00000" })).toEqual(["/openings/0/id"]);
    expect(withOpening({ tag: "C0" })).toEqual(["/openings/0/tag"]);
    expect(withOpening({ containerId: "c9" })).toEqual(["/openings/0/containerId"]);
  });
});
