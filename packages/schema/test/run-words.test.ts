import { describe, expect, it } from "vitest";
import { caseWords, movesSupport, runWords } from "../src/wording/run-words.ts";

describe("runs in plain words", () => {
  it("say what acts before the sum it is of", () => {
    expect(runWords("1.2D + 1.6L + 0.5S: D most, L unit F1, S uniform")).toBe(
      "Dead load at its heaviest, only F1 loaded, snow even (1.2D + 1.6L + 0.5S)",
    );
  });

  it.each([
    ["T B4 settled", "B4 settled"],
    ["W1 +x inside pressure", "wind along +x inside pressure, its case 1"],
    ["W least -y", "least wind along -y"],
    ["E +y clockwise", "earthquake along +y clockwise"],
    ["N -x", "leaning along -x"],
    ["L overhang T1", "only the overhang of T1 loaded"],
  ])("say %s", (name, words) => expect(caseWords(name)).toBe(words));

  it("pass on what they do not know", () => {
    expect(caseWords("something else")).toBe("something else");
    expect(runWords("bare")).toBe("bare");
  });
});

it("tells a run in which a support moves from one whose supports stand where they are drawn", () => {
  expect(movesSupport("1.2D + 1.6L + 0.5Lr: D most, L everywhere, Lr everywhere, T B3 settled")).toBe(true);
  expect(movesSupport("1.2D + 1.6L + 0.5Lr: D most, L everywhere, Lr everywhere")).toBe(false);
});
