import { assess } from "@cornerway/engine";
import { elementNames, markSentences } from "@cornerway/schema";
import { expect, it } from "vitest";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// A whole side out, two posts at third points with pads under them, nothing on the rail they hold: statics of a rigid
// box gives the posts no share, though the rail they hold will give them one. No figure is better than 0 kN.
const unit = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
const posts = [-1998, 1998].map((x, at) => ({ id: `p${at + 1}`, x, y: 1168, foot: 174.5, head: 2830 }));
const scheme = schemeOf({
  units: [unit],
  pads: [...padsUnder(unit), ...posts.map(({ id, x }) => ({ id: `${id}-pad`, x, y: 1168 }))],
  posts,
  cuts: [{ id: "o1", in: "a", face: "left", use: "open-wall", at: 160, sill: 174.5, width: 11872, height: 2655.5 }],
});

it("a post under a rail with nothing on it is not said to take 0 kN", () => {
  const carries = assess(scheme).marks.filter(({ fact }) => fact.kind === "post-carries");
  expect(carries).toHaveLength(2);
  for (const mark of carries)
    for (const reader of ["architect", "engineer"] as const) {
      const { body } = markSentences(mark, elementNames(scheme), reader);
      expect(body).not.toMatch(/\b0(\.0)? kN/);
      expect(body).toMatch(/stiff/);
    }
});
