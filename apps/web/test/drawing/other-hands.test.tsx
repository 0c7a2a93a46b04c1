import type { Presence } from "@cornerway/schema";
import { cleanup, render } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { elementCorners } from "../../src/drawing/others/element-corners.ts";
import { OtherHands } from "../../src/drawing/others/OtherHands.tsx";
import { otherHands, pencilOf } from "../../src/drawing/others/other-hands.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

afterEach(cleanup);

const scheme = schemeOf([unitAt("g1", "G1", 0, 0, 0)]);
const view = { originXPx: 400, originYPx: 300, pxPerM: 20 };
const presence: Presence = {
  ...{ sheet: 1, selected: "g1", dragging: null },
  pointer: { projection: "south", at: { xMm: 1000, yMm: 0, zMm: 2000 } },
};
const one = { connection: "c1", personId: "p1", name: "Emmet Quillon", role: "engineer", presence } as const;
const mine = { ...one, connection: "c2", personId: "me" };
const elsewhere = { ...one, connection: "c3", presence: { ...presence, sheet: 3 } };
const idle = { ...one, connection: "c4", presence: { ...presence, selected: null, pointer: undefined } };

describe("others at the same sheet", () => {
  it("are those who hold or point at something there, not oneself", () => {
    const { pointer: _gone, ...still } = idle.presence;
    const here = [one, mine, elsewhere, { ...idle, presence: still }];
    expect(otherHands(here, "me", 1).map(({ key }) => key)).toEqual(["c1"]);
  });

  it("ring what they have chosen in their own pencil on every view, and point on the one they point at", () => {
    const hands = otherHands([one], "me", 1);
    const south = render(
      <svg>
        <OtherHands hands={hands} scheme={scheme} projection="south" view={view} />
      </svg>,
    ).container;
    const [ring, pencil] = south.querySelectorAll("path");
    expect(ring?.getAttribute("stroke")).toBe(pencilOf.engineer);
    expect(south.querySelector("text")?.textContent).toBe("Emmet");
    // by hand: 1 m east of the origin and 2 m up at 20 px a metre
    expect(pencil?.getAttribute("d")).toMatch(/^M420 260/);
    cleanup();
    const plan = render(
      <svg>
        <OtherHands hands={hands} scheme={scheme} projection="plan" view={view} />
      </svg>,
    ).container;
    expect(plan.querySelectorAll("path")).toHaveLength(1);
  });

  it("ring a unit by its eight corners, and nothing that is gone", () => {
    expect(elementCorners(scheme, "g1")).toHaveLength(8);
    expect(elementCorners(scheme, "gone")).toEqual([]);
  });
});
