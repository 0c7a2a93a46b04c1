import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  assessmentScopes,
  memoryValues,
  sealHindrances,
  verdicts,
  type Assessment,
  type CheckWorking,
  type Mark,
  type SealedOn,
  type StrengthReport,
  type Verdict,
} from "../src/index.ts";

const mark = (id: string, verdict: Verdict, more: Partial<Mark> = {}): Mark => ({
  ...{ id, verdict, fact: { kind: "borne-on-fittings", heaviestPostKn: 10 }, elements: ["g1"] },
  ...{ at: { xMm: 0, yMm: 0, zMm: 0 }, basis: "Statics.", certainty: "derived" as const },
  ...more,
});

const answerWith = (marks: Mark[], scope: Assessment["scope"] = "load path, and strength under all loads") =>
  ({
    ...{ engineVersion: "0.0.0", verdict: "works as built", scope, units: [], bearings: [], path: [], marks },
    ...{ statics: { loadKn: 0, reactionKn: 0, residualKn: 0, reactions: [] }, questions: 0 },
  }) satisfies Assessment;

const clear: SealedOn = {
  ...{ result: answerWith([]), report: null, openConditions: [], disposed: new Set() },
  ...{ memory: [], confirmed: new Set() },
};
const whys = (on: Partial<SealedOn>) => sealHindrances({ ...clear, ...on }).map(({ why }) => why);

/** A part of g1 used to 1.2 of its strength. */
const beyond: StrengthReport["results"][number] = {
  ...{ id: "g1/post", ownerId: "g1", part: "corner post", place: "front left", check: "buckling", utilisation: 1.2 },
  ...{ run: "1.2D + 1.6L", assumptions: "usual", held: [], envelope: [], coverage: "checked" },
};
const reportWith = (results: StrengthReport["results"]): StrengthReport => ({
  ...{ results, coverage: [], loads: [], cases: [], combinations: [], windLimits: [] },
  ...{ actionsLeftOut: [], withoutEquilibrium: [] },
});

describe("what stands in the way of the seal", () => {
  it("is nothing where strength is judged under all loads and nothing is open", () => {
    expect(whys({ result: answerWith([mark("a", "works as built"), mark("b", "works with steel")]) })).toEqual([]);
  });

  it.each(assessmentScopes.slice(0, 2))("is the scope where it is: %s", (scope) => {
    expect(whys({ result: answerWith([], scope) })).toEqual(["strength not judged under all loads"]);
  });

  it.each(["does not work", "not checked", "needs the engineer"] as const)(
    "is a mark that is: %s, until the engineer's own disposition stands on that very mark",
    (verdict) => {
      const result = answerWith([mark("a", verdict), mark("b", verdict)]);
      expect(whys({ result })).toEqual(["mark", "mark"]);
      expect(sealHindrances({ ...clear, result, disposed: new Set(["a"]) })).toEqual([
        { why: "mark", markId: "b", verdict },
      ]);
    },
  );

  it("is a part beyond its limit, which only a disposition on the strength of its element lets pass", () => {
    const report = reportWith([beyond]);
    const overstressed = mark("over", "does not work", {
      fact: { kind: "overstressed", parts: [], more: 0 } as unknown as Mark["fact"],
    });
    expect(whys({ report })).toEqual(["beyond its limit"]);
    const other = answerWith([mark("a", "needs the engineer")]);
    expect(whys({ report, result: other, disposed: new Set(["a"]) })).toEqual(["beyond its limit"]);
    expect(whys({ report, result: answerWith([overstressed]), disposed: new Set(["over"]) })).toEqual([]);
    expect(whys({ report: reportWith([{ ...beyond, utilisation: 1 }]) })).toEqual([]);
  });

  it("is every open condition and every unconfirmed value from memory, whatever else is settled", () => {
    expect(whys({ openConditions: [3, 4] })).toEqual(["condition open", "condition open"]);
    const on = { memory: ["ISO 668", "AISC 360-16 E3"], confirmed: new Set(["ISO 668"]) };
    expect(sealHindrances({ ...clear, ...on })).toEqual([{ why: "from memory", value: "AISC 360-16 E3" }]);
  });

  it("is nothing only where every open mark is disposed, no condition is open and every value is confirmed", () => {
    const ids = ["a", "b", "c"] as const;
    const verdict = fc.constantFrom(...verdicts);
    fc.assert(
      fc.property(
        fc.tuple(verdict, verdict, verdict),
        fc.subarray([...ids]),
        fc.nat(2),
        fc.subarray(["x", "y"]),
        (given, disposed, conditions, confirmed) => {
          const marks = ids.map((id, at) => mark(id, given[at] ?? "not checked"));
          const open = marks.filter(
            (each) => !each.verdict.startsWith("works") && !disposed.some((id) => id === each.id),
          );
          const hindrances = sealHindrances({
            ...{ ...clear, result: answerWith(marks), disposed: new Set(disposed), memory: ["x", "y"] },
            ...{ openConditions: Array.from({ length: conditions }, (_, at) => at + 1), confirmed: new Set(confirmed) },
          });
          expect(hindrances.length).toBe(open.length + conditions + (2 - confirmed.length));
        },
      ),
    );
  });
});

describe("values from memory", () => {
  const clause = { document: "AISC 360", edition: "16", place: "E3", certainty: "memory" as const };
  const working = (more: Partial<CheckWorking>): CheckWorking => ({
    ...{ title: "t", clause: { ...clause, certainty: "published" }, certainty: "memory", symbols: [], steps: [] },
    ...{ result: { symbol: "r", value: 1, unit: "kN" }, notes: [], parts: [] },
    ...more,
  });

  it("are found in marks, clauses, symbols with their numbers, parts of workings, loads, each once and in order", () => {
    const symbol = { symbol: "A", meaning: "area", value: 2615, unit: "mm²", source: "generic post" };
    const part = working({
      symbols: [
        { ...symbol, certainty: "memory" },
        { ...symbol, certainty: "derived" },
      ],
    });
    const report = reportWith([]);
    const load = { id: "l", group: "snow" as const, title: "t", symbol: "p", value: 1, unit: "kPa", clause };
    const found = memoryValues(
      answerWith([
        mark("a", "works as built", { certainty: "memory", basis: "ISO 1161" }),
        mark("b", "works as built"),
      ]),
      { ...report, loads: [{ ...load, certainty: "memory" }] },
      [working({ clause }), working({ parts: [part] })],
    );
    expect(found).toEqual(["AISC 360, 16, E3", "ISO 1161", "area: 2615 mm², generic post"]);
  });

  it("are not the results that other workings give, and one of no other source is named by its clause", () => {
    const factor = { symbol: "φ", meaning: "resistance factor", value: 0.9, unit: "1", certainty: "memory" as const };
    const load = { ...factor, symbol: "L", meaning: "roof live load", value: 957.605_179_6, unit: "Pa" };
    const given = working({ title: "Roof live load", symbols: [{ ...load, meaning: "ordinary flat roof" }] });
    const rests = working({ symbols: [factor, { ...load, source: "Roof live load" }], parts: [given] });
    expect(memoryValues(answerWith([]), null, [rests])).toEqual([
      "ordinary flat roof: 957.605 Pa, AISC 360, 16, E3",
      "resistance factor: 0.9, AISC 360, 16, E3",
    ]);
  });
});
