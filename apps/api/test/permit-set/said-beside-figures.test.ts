import { resultDigest } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { makeSet } from "../../src/permit-set/make-set.ts";
import type { Block } from "../../src/permit-set/paper/ink.ts";
import type { SetSource } from "../../src/permit-set/set-source.ts";
import { smallScheme, sourceOf } from "../support/sample-set.ts";

const wordsOf = ({ inks, children = [] }: Block): string[] => [
  ...inks.flatMap((ink) => (ink.kind === "text" ? [ink.text] : [])),
  ...children.flatMap(wordsOf),
];

function pagesOf(source: SetSource): string[] {
  const outcome = makeSet(source);
  if (!outcome.ok) throw new Error(outcome.why.join("\n"));
  return outcome.set.pages.map(({ blocks }) => blocks.flatMap(wordsOf).join(" "));
}

const source = sourceOf(smallScheme(), { strength: true });

/** The set of the same building whose record says something else. */
function recorded(alter: (report: NonNullable<SetSource["proof"]>["report"]) => void): string[] {
  const proof = structuredClone(source.proof);
  if (proof === null) throw new Error("strength was run");
  alter(proof.report);
  const digest = resultDigest(source.revision.contentDigest, source.assessment, proof);
  return pagesOf({ ...source, proof, resultDigest: digest });
}

describe("what the set says beside a figure", () => {
  it("is the utilisation at 343 MPa, if proved, of every part whose steel has no record", () => {
    const words = recorded(({ results }) => {
      const rail = results.find(({ part }) => part === "bottom side rail");
      if (rail !== undefined) rail.ifProved = 123.45;
    });
    const table = words.filter((page) => page.includes("Least to most")).join(" ");
    expect(table).toContain("If proved");
    expect(table).toContain("343 MPa");
    expect(table).toContain("123.45");
  });

  it("is that a stock lock is no code-listed connector, above the table that has a lock, and nowhere else", () => {
    const locked = recorded(({ results }) => {
      const [first] = results;
      if (first !== undefined) first.part = "lock";
    }).join(" ");
    const said = "A stock lock is a transport fitting and no code-listed connector";
    expect(locked).toContain(said);
    expect(locked.indexOf(said)).toBeLessThan(locked.indexOf("Least to most"));
    expect(pagesOf(source).join(" ")).not.toContain(said);
  });

  it("is each limit of the wind procedure, the number that decides, and what stands in where it fails", () => {
    const clause = { document: "ASCE/SEI 7", edition: "16", place: "27.1.2", certainty: "memory" } as const;
    const words = recorded((report) => {
      report.windLimits = [
        { limit: "closed below", holds: false, value: 0.37, most: 0, unit: "1", clause },
        { limit: "one block", holds: true, value: 1, most: 1, unit: "1", clause },
      ];
    }).join(" ");
    expect(words).toContain("Limits of the wind procedure");
    expect(words).toMatch(/closed below .*0\.37.* does not hold: the enclosing box stands in/);
    expect(words).toContain("27.1.2");
  });
});

describe("who chose how sheet walls count", () => {
  const criteria = (sheetWallsChosen: SetSource["sheetWallsChosen"]): string =>
    pagesOf({ ...source, sheetWallsChosen }).join(" ");

  it("is printed with part and day: who asked, and who drew it", () => {
    const words = criteria({
      asked: { by: "Tobias Fenn", role: "engineer", at: "2026-11-25T09:00:00.000Z" },
      drawn: { by: "Ines Marrow", role: "architect", at: "2026-11-26T09:00:00.000Z" },
    });
    expect(words).toContain("asked for by Tobias Fenn, engineer, 25 Nov 2026");
    expect(words).toContain("Ines Marrow, architect, 26 Nov 2026");
  });

  it("is said to be nobody where the rule stands as a project begins with it", () => {
    expect(criteria(null)).toContain("nobody: the rule stands as every project begins with it");
  });
});
