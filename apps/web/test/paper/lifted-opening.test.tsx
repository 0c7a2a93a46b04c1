import { act, cleanup, render } from "@testing-library/react";
import { useLayoutEffect } from "react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { PickedElement } from "../../src/drawing/contract.ts";
import { useHand, type Hand } from "../../src/hand/use-hand.ts";
import { LiftedOpening } from "../../src/paper/LiftedOpening.tsx";
import { furnished, opening } from "../support/furnished.ts";

const view = { originXPx: 400, originYPx: 300, pxPerM: 50 };
/** The long side of a 40 ft unit, 12.192 m (ISO 668), from x = −6.096 m: a point of it by its way from that end. */
const onWall = (uMm: number, zMm: number) => ({ xMm: uMm - 6096, yMm: -1219, zMm });
const point = (uMm: number, zMm: number) => ({ at: onWall(uMm, zMm), projection: "south" as const, reachMm: 0 });
const draw = vi.fn<() => boolean>(() => true);

let hand: Hand;
let renders = 0;

function Sheet() {
  const own = useHand({ scheme: furnished, draw, cannot: () => undefined, mayDraw: true, side: "south", lifts: true });
  useLayoutEffect(() => {
    hand = own;
    renders += 1;
  });
  return (
    <svg>
      <text>{own.shown.openings.map(({ widthUm }) => widthUm).join()}</text>
      <LiftedOpening lift={own.lift} side="south" view={view} />
    </svg>
  );
}

const lettered = () => [...document.querySelectorAll(".held-opening text")].map(({ textContent }) => textContent);
const outline = () => document.querySelector(".held-opening rect");
const press = (picked: PickedElement, uMm: number, zMm: number) =>
  act(() => hand.pressAt(picked, point(uMm, zMm), null));

/** What the hand does and what it draws are fetched when they are first needed. */
const drawnLater = () =>
  act(async () => {
    await import("../../src/hand/acts.ts");
    await import("../../src/drawing/elevation/HeldOpening.tsx");
  });

describe("LiftedOpening", () => {
  beforeEach(async () => {
    render(<Sheet />);
    await drawnLater();
    vi.useFakeTimers(); // the hand never rests
  });
  afterEach(() => {
    act(() => hand.letGo());
    cleanup();
    vi.useRealTimers();
    draw.mockClear();
  });

  const farEdge = { id: opening.id, kind: "opening", at: onWall(5000, 1500), edges: { along: 1, up: 0 } } as const;

  it("draws an opening whose edge is dragged, with its distances, and renders nothing else for it", async () => {
    press(farEdge, 5000, 1500);
    act(() => hand.moveTo(point(5200, 1500)));
    await drawnLater();
    const before = renders;
    act(() => hand.moveTo(point(5500, 1500)));
    // 3.0 m from the end; 5.5 − 3.0; 12.192 − 5.5. Sill at 0.9 m; 1.2 high; 2.896 − 2.1 to the top (ISO 668).
    expect(lettered()).toEqual(["3.000", "2.500", "6.692", "0.900", "1.200", "0.796"]);
    expect(outline()?.getAttribute("x")).toBe(String(400 + (3 - 6.096) * 50));
    expect(outline()?.getAttribute("width")).toBe("125"); // 2.5 m at 50 px
    expect(renders).toBe(before);
    expect(hand.shown.openings[0]?.widthUm).toBe(opening.widthUm);
  });

  it("lays it down where the hand has it", () => {
    press(farEdge, 5000, 1500);
    act(() => hand.moveTo(point(5500, 1500)));
    act(() => hand.drop());
    expect(draw.mock.calls).toMatchObject([[[{ kind: "opening.shape", id: opening.id, widthUm: 2_500_000 }]]]);
    expect(outline()).toBeNull();
  });

  it("draws the rectangle being cut on a wall", async () => {
    act(() => hand.take("cut"));
    press({ id: "g1", kind: "container", face: "right", at: onWall(7000, 800) }, 7000, 800);
    act(() => hand.moveTo(point(8000, 1800)));
    await drawnLater();
    const before = renders;
    act(() => hand.moveTo(point(8500, 1800)));
    expect(lettered().slice(0, 3)).toEqual(["7.000", "1.500", "3.692"]); // 12.192 − 8.5
    expect(renders).toBe(before);
    expect(hand.shown.openings).toHaveLength(1);
  });
});
