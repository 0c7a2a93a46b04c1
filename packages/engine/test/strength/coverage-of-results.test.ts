import { describe, expect, it } from "vitest";
import { strength } from "../../src/strength.ts";
import { onPadsByHand, ordinarySchemes } from "./ordinary-schemes/ordinary-schemes.ts";

describe("what governs a part", () => {
  it("is a limit state that the table of what is judged knows of its element: with seats, cut sides and neighbours", () => {
    const scheme = ordinarySchemes["an overhang of 1 m"];
    if (scheme === undefined) throw new Error("the sample is there");
    const answer = strength(onPadsByHand(scheme));
    if (!answer.accepted) throw new Error("its hazards are accepted");
    const unknown = answer.results.filter(({ covered }) => covered === "does not arise");
    expect(unknown.map(({ id, limitState }) => `${id}: ${limitState}`)).toEqual([]);
  });
});
