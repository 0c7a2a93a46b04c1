import { applyOperations } from "@cornerway/schema";
import type { Operation, Scheme, UnitSystem } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { moveUnit } from "../../src/tools/move-unit.ts";
import { placeUnit } from "../../src/tools/place-unit.ts";
import { actSentence } from "../../src/wording/act-sentence.ts";
import { entrySentence, undosIn } from "../../src/wording/entry-sentence.ts";
import { namesIn } from "../../src/wording/name-of.ts";
import { refusalSentence } from "../../src/wording/refusal-sentence.ts";
import { tallySentence } from "../../src/wording/tally-sentence.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const g1 = unitAt("g1", "G1", 0, 0, 0);
const scheme = schemeOf([g1]);

const told = (before: Scheme, operations: Operation[], units: UnitSystem = "SI"): string => {
  const applied = applyOperations(before, operations);
  if (!applied.ok) throw new Error(applied.refusal.reason);
  return actSentence(operations, applied.inverse, namesIn(before, operations), units);
};

describe("actSentence(operations, inverse, names)", () => {
  it("tells a move by its way, to the centimetre, with the building as subject", () => {
    expect(told(scheme, moveUnit(scheme, { ...g1, xUm: 850_000 }))).toBe("G1 moved 0.85 m east");
    expect(told(scheme, moveUnit(scheme, { ...g1, xUm: -10_000, yUm: 300_000 }))).toBe(
      "G1 moved 0.01 m west and 0.30 m north",
    );
    // 850 mm = 33.46 in, nearest sixteenth 2'-9 7/16"
    expect(told(scheme, moveUnit(scheme, { ...g1, xUm: 850_000 }), "US")).toBe(`G1 moved 2'-9 7/16" east`);
  });

  it("tells a unit set with its pads and loads as one thing", () => {
    const f1 = unitAt("f1", "F1", 0, 0, 2896);
    expect(told(scheme, placeUnit(scheme, f1))).toBe("F1 set, a 40 ft high cube");
  });

  it("tells a run of many things by the first two and how many more", () => {
    const more = [1, 2, 3, 4].map((at): Operation => ({
      kind: "container.place",
      container: unitAt(`u${at}`, `F${at}`, 0, 0, 2896 * at),
    }));
    expect(told(scheme, more)).toBe("F1 set, a 40 ft high cube, F2 set, a 40 ft high cube and 2 more");
  });
});

describe("entrySentence(payload, names, undos)", () => {
  const drawn = (actId: string, undoes: string | null, operations: Operation[]) => ({
    kind: "drawn" as const,
    actId,
    draftNumber: 1,
    contentDigest: "0".repeat(64),
    operations,
    inverse: [],
    undoes,
  });
  const turn: Operation[] = [{ kind: "container.turn", id: "g1", turnMdeg: 90_000 }];
  const acts = [drawn("a", null, turn), drawn("b", "a", turn), drawn("c", "b", turn)];

  it("tells drawing, taking back and drawing again apart", () => {
    const undos = undosIn(acts);
    expect(acts.map((payload) => entrySentence(payload, namesIn(scheme), undos, "SI"))).toEqual([
      "G1 turned to 90°.",
      "Taken back: G1 turned to 90°.",
      "Drawn again: G1 turned to 90°.",
    ]);
  });

  it("says that something is not shown where the reader may not see it", () => {
    expect(entrySentence(null, namesIn(scheme), new Set(), "SI")).toBe("Something not shown here.");
  });
});

describe("refusalSentence(refusal, names)", () => {
  it("names what is in the way", () => {
    const names = (id: string) => ({ g1: "G1", o1: "D1", o2: "W1" })[id] ?? id;
    expect(refusalSentence({ reason: "still-holds", elementId: "g1", by: ["o1", "o2"] }, names)).toBe(
      "G1 still holds D1 and W1. Take those away first.",
    );
  });
});

describe("tallySentence(marks)", () => {
  const mark = (verdict: "does not work" | "not checked") => ({
    id: "x",
    verdict,
    certainty: "derived" as const,
    elements: ["g1"],
    at: { xMm: 0, yMm: 0, zMm: 0 },
    fact: { kind: "pad-holds-nothing" as const },
    basis: "",
  });
  it("counts by verdict, worst first, never the list", () => {
    expect(tallySentence([mark("not checked"), mark("does not work"), mark("not checked")])).toBe(
      "1 note does not work, 2 not checked.",
    );
    expect(tallySentence([])).toBe("No notes.");
  });
});
