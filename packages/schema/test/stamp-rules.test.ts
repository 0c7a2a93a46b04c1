import {
  dispositions,
  stampRefusals,
  stampRefusalSentence,
  type Assessment,
  type Mark,
  type Verdict,
} from "@cornerway/schema";
import { describe, expect, it } from "vitest";

const mark = (id: string, verdict: Verdict): Mark => ({
  id,
  fact: { kind: "borne-on-fittings", heaviestPostKn: 10 },
  verdict,
  elements: ["u1"],
  at: { xMm: 0, yMm: 0, zMm: 0 },
  basis: "Statics.",
  certainty: "derived",
});

function answerWith(marks: Mark[], scope: Assessment["scope"] = "load path, and strength under all loads"): Assessment {
  return {
    engineVersion: "0.0.0",
    verdict: "works as built",
    scope,
    units: [],
    bearings: [],
    path: [],
    marks,
    statics: { loadKn: 0, reactionKn: 0, residualKn: 0, reactions: [] },
    questions: 0,
  };
}

const none: ReadonlySet<string> = new Set();
const whys = (disposition: (typeof dispositions)[number], result: Assessment, answered = none, openRequests = 0) =>
  stampRefusals(disposition, { result, answered, openRequests, openConditions: 0 }).map(({ why }) => why);

describe("stampRefusals", () => {
  it("opens every stamp on what works under all loads with nothing open", () => {
    const works = answerWith([mark("a", "works as built"), mark("b", "works with steel")]);
    for (const disposition of dispositions) expect(whys(disposition, works)).toEqual([]);
  });

  it.each(["Revise and resubmit", "Rejected"] as const)("%s is open on whatever the answer says", (disposition) => {
    const worst = answerWith([mark("a", "does not work")], "load path only, no strength checked");
    expect(whys(disposition, worst, none, 3)).toEqual([]);
  });

  it("lets no work go on while what the stamp covers was found to stand otherwise, and may still send back", () => {
    const works = answerWith([mark("a", "works as built")]);
    const on = { result: works, answered: none, openRequests: 0, openConditions: 0, found: ["g1"] };
    for (const disposition of ["No exceptions taken", "Make corrections noted"] as const)
      expect(stampRefusals(disposition, on)).toEqual([{ why: "found otherwise", elements: ["g1"] }]);
    for (const disposition of ["Revise and resubmit", "Rejected"] as const)
      expect(stampRefusals(disposition, on)).toEqual([]);
  });

  it.each(["No exceptions taken", "Make corrections noted"] as const)(
    "%s needs strength judged under all loads, whatever the marks say",
    (disposition) => {
      const quiet = [mark("a", "works as built")];
      expect(whys(disposition, answerWith(quiet, "load path only, no strength checked"))).toEqual([
        "strength not judged",
      ]);
      expect(whys(disposition, answerWith(quiet, "load path, and strength under gravity loads"))).toEqual([
        "gravity alone",
      ]);
    },
  );

  it.each(["does not work", "not checked"] as const)(
    "a mark that %s closes both that let work go on, answered or not",
    (verdict) => {
      const result = answerWith([mark("a", verdict)]);
      for (const disposition of ["No exceptions taken", "Make corrections noted"] as const)
        expect(whys(disposition, result, new Set(["a"]))).toEqual([verdict]);
    },
  );

  it("a mark that needs the engineer leaves corrections to be noted, and exceptions until it is answered", () => {
    const result = answerWith([mark("a", "needs the engineer"), mark("b", "needs the engineer")]);
    expect(whys("Make corrections noted", result)).toEqual([]);
    expect(
      stampRefusals("No exceptions taken", { result, answered: new Set(["a"]), openRequests: 0, openConditions: 0 }),
    ).toEqual([{ why: "needs the engineer", marks: 1 }]);
    expect(whys("No exceptions taken", result, new Set(["a", "b"]))).toEqual([]);
  });

  it("an open request is an exception", () => {
    const works = answerWith([mark("a", "works as built")]);
    expect(whys("No exceptions taken", works, none, 1)).toEqual(["requests open"]);
    expect(whys("Make corrections noted", works, none, 1)).toEqual([]);
  });

  it("says each in a sentence that counts", () => {
    const result = answerWith([mark("a", "does not work"), mark("b", "not checked")]);
    const said = stampRefusals("No exceptions taken", { result, answered: none, openRequests: 2, openConditions: 1 });
    expect(said.map(stampRefusalSentence)).toEqual([
      "1 mark does not work.",
      "1 mark is not checked.",
      "2 change requests are open.",
      "1 condition is open.",
    ]);
  });
});
