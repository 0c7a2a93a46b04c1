import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// b stands corner on corner on a, whose whole left side is out. Posts and pads added under a's rails take nothing away
// from a's corner posts, which b's load runs down.
const a = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
const posts = [-1998, 1998].map((x, at) => ({ id: `p${at + 1}`, x, y: 1168, foot: 174.5, head: 2830 }));
const under = posts.map(({ id, x }) => ({ id: `${id}-pad`, x, y: 1168 }));
const cut = { id: "o1", in: "a", face: "left", use: "open-wall", at: 160, sill: 174.5, width: 11872, height: 2655.5 };
const of = (added: { posts?: typeof posts; pads: { id: string; x: number; y: number }[] }) =>
  verdictOf(
    assess(
      schemeOf({
        units: [a, { ...a, id: "b", z: 2896 }],
        cuts: [{ ...cut, face: "left" as const, use: "open-wall" as const }],
        ...added,
      }),
    ),
    "b",
  );

it("posts added under the rails of a unit do not unsettle the unit that stands on its corners", () => {
  expect(of({ pads: padsUnder(a) })).toBe("works as built");
  expect(of({ pads: [...padsUnder(a), ...under], posts })).toBe("works as built");
});

it("a corner of the unit below in the air does", () => {
  expect(
    of({
      pads: [
        ...padsUnder(a)
          .slice(1)
          .map((pad) => ({ ...pad, top: -20 })),
        ...under,
      ],
      posts,
    }),
  ).not.toBe("works as built");
});
