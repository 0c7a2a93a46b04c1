import { applyOperations, emptyScheme, type Operation, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { carriedText, readCarried, type CarriedGroup } from "../../src/tools/carried-group.ts";
import { pasteGroup } from "../../src/tools/paste-group.ts";
import { furnished } from "../support/furnished.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const carried = (scheme: Scheme, ids: readonly string[]): CarriedGroup => {
  const read = readCarried(carriedText(scheme, ids));
  if ("cannot" in read) throw new Error(read.cannot);
  return read;
};

const laid = (scheme: Scheme, pasted: Operation[] | { cannot: string }): Scheme => {
  if ("cannot" in pasted) throw new Error(pasted.cannot);
  const applied = applyOperations(scheme, pasted);
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusal));
  return applied.scheme;
};

describe("things carried to another scheme", () => {
  it("stand there as they stood, with what is in and between them, under ids of their own", () => {
    const there = laid(emptyScheme, pasteGroup(carried(furnished, ["g1", "g2"]), emptyScheme, null));
    const places = there.containers.map(({ tag, xUm, yUm, zUm }) => [tag, xUm, yUm, zUm]);
    expect(places.toSorted()).toEqual([
      ["G1", 0, 0, 0],
      ["G2", 0, 2_438_000, 0],
    ]);
    const idOf = (tag: string) => there.containers.find((unit) => unit.tag === tag)?.id;
    expect(there.containers.map(({ id }) => id)).not.toContain("g1");
    expect(there.openings).toMatchObject([{ tag: "W1", containerId: idOf("G1"), offsetUm: 3_000_000 }]);
    expect(there.ties).toMatchObject([{ aId: idOf("G1"), bId: idOf("G2") }]);
    expect(there.locks).toMatchObject([{ containerId: idOf("G1"), fitting: "front-right" }]);
    // the seat joins a unit that was not chosen
    expect(there.seats).toEqual([]);
  });

  it("leave site and design basis at home", () => {
    const far = { ...furnished, site: { ...furnished.site, groundZUm: 7_000_000 } };
    expect(carried(far, ["g1"]).scheme.site).toEqual(emptyScheme.site);
  });

  it("are laid 1 m beside what stands in their place: a 40 ft unit goes 12.192 + 1.000 m east", () => {
    const there = schemeOf([unitAt("a", "G1", 0, 0, 0)]);
    const units = laid(there, pasteGroup(carried(furnished, ["g1"]), there, null)).containers;
    expect(units.filter(({ id }) => id !== "a")).toMatchObject([{ tag: "G2", xUm: 13_192_000, yUm: 0 }]);
  });

  it("keep their place where nothing stands there", () => {
    const there = schemeOf([unitAt("a", "G1", 0, 9000, 0)]);
    const units = laid(there, pasteGroup(carried(furnished, ["g1"]), there, null)).containers;
    expect(units.filter(({ id }) => id !== "a")).toMatchObject([{ xUm: 0, yUm: 0 }]);
  });

  it("go on the chosen unit where they are a window without its own", () => {
    const there = schemeOf([unitAt("a", "G1", 0, 0, 0), unitAt("b", "G2", 0, 9000, 0)]);
    const window = carried(furnished, ["o1"]);
    expect(laid(there, pasteGroup(window, there, "b")).openings).toMatchObject([
      { tag: "W1", containerId: "b", face: "right", widthUm: 2_000_000 },
    ]);
    expect(pasteGroup(window, there, null)).toEqual({
      cannot: "Choose the unit that this goes on, then lay it there.",
    });
  });

  it("are no joint without the units that it joins", () => {
    expect(pasteGroup(carried(furnished, ["s1"]), emptyScheme, null)).toMatchObject({
      cannot: expect.stringContaining("choose the units as well"),
    });
  });
});

describe("a text that is laid on a sheet", () => {
  it.each(["", "4.5 kN", "{", "[]", '{"format":"other","chosen":["g1"],"scheme":{}}'])("is refused as %j", (text) => {
    expect(readCarried(text)).toEqual({ cannot: "The clipboard holds nothing that was copied from a sheet." });
  });

  it("is refused with the place of its fault", () => {
    const text = carriedText(furnished, ["g1"]).replace('"turnMdeg":0', '"turnMdeg":"east"');
    expect(readCarried(text)).toMatchObject({ cannot: expect.stringContaining("/containers/0/turnMdeg") });
  });

  it("is refused where something chosen is not in it", () => {
    const text = carriedText(furnished, ["g1"]).replace('"chosen":["g1"]', '"chosen":["g9"]');
    expect(readCarried(text)).toMatchObject({ cannot: expect.stringContaining("g9 is missing") });
  });
});
