import { MarkFact, elementNames, emptyScheme, markSentences, readers, verdicts, type Mark } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { everyFact } from "./every-fact.ts";

const names = new Map([
  ["a", "T1"],
  ["b", "F1"],
  ["c", "G1"],
]);

const markWith = (fact: MarkFact, verdict: Mark["verdict"] = "not checked"): Mark => ({
  id: `${fact.kind}:a+b+c`,
  verdict,
  certainty: "common practice",
  elements: ["a", "b", "c"],
  at: { xMm: 0, yMm: 0, zMm: 0 },
  fact,
  basis: "Statics.",
});

const told = everyFact.flatMap((fact) =>
  readers.map((reader) => ({ reader, kind: fact.kind, said: markSentences(markWith(fact), names, reader) })),
);

/** Words the drawing never says, to anyone. */
const never =
  /\b(fail(s|ed|ure)?|error|invalid|optimi[sz]e|leverage|user|submit|workflow|dashboard|asset|module|ok|yes|save|please|sorry|we|our|safe|certified|compliant|approved)\b|!/i;
/** What owners never read: clauses, standards, forces, symbols. */
const notForOwners = /kN|\bmm\b|[%±≤≥×§°]|\b(IBC|ISO|AISC|ASCE|clause)\b|[0-9]{4}/;

describe("markSentences", () => {
  it("has a fact of every kind in this test, so that no kind goes unread", () => {
    const kinds = MarkFact.options.map((option) => option.shape.kind.value).toSorted();
    expect([...new Set(everyFact.map(({ kind }) => kind))].toSorted()).toEqual(kinds);
    for (const fact of everyFact) expect(MarkFact.safeParse(fact).success, JSON.stringify(fact)).toBe(true);
  });

  it("says none of the words the drawing never says, to any reader", () => {
    for (const { said } of told) expect(`${said.heading} ${said.body} ${said.detail ?? ""}`).not.toMatch(never);
  });

  it("gives owners no clause, no symbol and no force", () => {
    const toOwners = told.filter(({ reader }) => reader === "owner");
    expect(toOwners).toHaveLength(everyFact.length);
    for (const { said } of toOwners) expect(`${said.body} ${said.detail ?? ""}`).not.toMatch(notForOwners);
  });

  it("says it in one or two sentences, whole and in order", () => {
    for (const { said } of told) {
      const sentences = said.body.split(/(?<=\.) (?=[A-Z])/);
      expect(sentences.length, said.body).toBeLessThanOrEqual(2);
      for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z].*\.$/);
      expect(said.body).not.toMatch(/undefined|NaN|Infinity| {2}|,\s*\./);
    }
  });

  it("names the element it concerns by its tag in every sentence of every reader", () => {
    for (const { said } of told) expect(said.body).toMatch(/\bT1\b/);
  });

  it("heads each note with the verdict in its exact words", () => {
    const fact = { kind: "openings-overlap" } as const;
    expect(verdicts.map((verdict) => markSentences(markWith(fact, verdict), names, "owner").heading)).toEqual([
      "Works as built",
      "Works with steel",
      "Not checked",
      "Needs the engineer",
      "Does not work",
    ]);
  });

  it("gives the engineer the basis and its certainty as the grey line", () => {
    const said = markSentences(markWith({ kind: "rocks", gapMm: 6.5 }), names, "engineer");
    expect(said.detail).toBe("Statics. Certainty: common practice.");
    expect(said.body).toContain("6.5 mm");
  });

  it("tells the architect the number and the place", () => {
    const fact = {
      kind: "overhang",
      lengthMm: 3000,
      towards: "east",
      bearingKn: 113.398,
      tailReactionKn: 56.628,
    } as const;
    expect(markSentences(markWith(fact), names, "architect").body).toMatch(
      /^T1 runs 3\.00 m past its last support to the east; 113 kN comes down there on F1 and G1\./,
    );
  });

  it("calls an element without a tag by its id", () => {
    const fact = { kind: "collision", depthMm: 120 } as const;
    expect(markSentences(markWith(fact), new Map(), "owner").body).toMatch(/^a and b are drawn in the same place\./);
  });
});

describe("elementNames", () => {
  it("finds no names in an empty scheme", () => {
    expect(elementNames(emptyScheme).size).toBe(0);
  });
});

describe("a mark that wind is outside its procedure", () => {
  it("names each limit that does not hold, to architect and engineer", () => {
    const windLimits = ["one roof level", "closed below"] as const;
    const mark = markWith({
      ...{ kind: "strength-open", parts: [], more: 0 },
      ...{ others: ["wind outside its limits"], windLimits: [...windLimits] },
    });
    for (const reader of ["architect", "engineer"] as const)
      expect(markSentences(mark, names, reader).body).toContain(
        "wind outside its limits (one roof level, closed below)",
      );
  });
});

describe("a mark that gives the figure of a lock", () => {
  it("says to the engineer that it is no code-listed connector", () => {
    const fact = everyFact.find((each) => each.kind === "overstressed");
    if (fact?.kind !== "overstressed") throw new Error("there is one of every kind");
    const [part] = fact.parts;
    if (part === undefined) throw new Error("it has a part");
    const mark = markWith({ ...fact, parts: [{ ...part, part: "lock", check: "lock tension" }] });
    expect(markSentences(mark, names, "engineer").body).toContain("no code-listed connector");
    expect(markSentences(markWith(fact), names, "engineer").body).not.toContain("no code-listed connector");
  });
});
