import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { factsOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// b stands on four posts, the posts on the top fittings of a, and a on nothing: 500 mm above the ground.
const a = { id: "a", type: "1AAA" as const, x: 0, y: 0, z: 500 };
const head = 500 + 2896 + 1000;
const posts = padsUnder(a).map(({ x, y }, at) => ({ id: `p${at}`, x, y, foot: 500 + 2896, head }));

it("what stands by posts on a unit that falls does not work either", () => {
  const assessment = assess(schemeOf({ units: [a, { ...a, id: "b", z: head }], posts }));
  const falls = factsOf(assessment, "mechanism").find(({ direction }) => direction === "falls");
  expect(falls?.elements).toEqual(["a", "b"]);
  expect(verdictOf(assessment, "b")).toBe("does not work");
});
