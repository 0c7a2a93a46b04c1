import { act, renderHook } from "@testing-library/react";
import type { Operation } from "@cornerway/schema";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { useHand } from "../../src/hand/use-hand.ts";
import { furnished } from "../support/furnished.ts";

const point = (xMm: number) => ({ at: { xMm, yMm: 0, zMm: 0 }, projection: "plan" as const, reachMm: 0 });
const drawnX = (hand: { shown: typeof furnished }) => hand.shown.containers.find(({ id }) => id === "g1")?.xUm;

type Drawn = (operations: Operation[]) => boolean;
const given = (draw: Drawn, lifts: boolean) => ({
  ...{ scheme: furnished, draw, cannot: () => undefined, mayDraw: true, side: "south" as const, lifts },
});
const picked = { id: "g1", kind: "container", at: { xMm: 0, yMm: 0, zMm: 0 } } as const;

// First of all, while what the hand does is not fetched yet.
describe("useHand() before its acts are there", () => {
  it("keeps what is done in order, and does it all once they are", async () => {
    const draw = vi.fn<Drawn>(() => true);
    const { result } = renderHook(() => useHand(given(draw, true)));
    act(() => result.current.pressAt(picked, point(0), null));
    act(() => result.current.moveTo(point(500)));
    act(() => result.current.drop());
    expect(draw).not.toHaveBeenCalled();
    await vi.waitFor(() => expect(draw).toHaveBeenCalledTimes(1), { timeout: 20_000 }); // until they are fetched
    const was = furnished.containers.find(({ id }) => id === "g1")?.xUm ?? Number.NaN;
    expect(draw.mock.calls[0]?.[0][0]).toMatchObject({ kind: "container.move", id: "g1", xUm: was + 500_000 });
    await vi.waitFor(() => expect(result.current.held).toBeNull());
  });
});

describe("useHand({ lifts })", () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  function taken(lifts: boolean) {
    const draw = vi.fn<Drawn>(() => true);
    const { result } = renderHook(() => useHand(given(draw, lifts)));
    act(() => result.current.pressAt(picked, point(0), null));
    return { hand: () => result.current, draw, was: drawnX(result.current) ?? 0 };
  }

  it("carries what is lifted on without the drawing being made anew, and tells where it is", () => {
    const { hand, was } = taken(true);
    act(() => hand().moveTo(point(10)));
    const drawn = hand();
    const heard: (number | undefined)[] = [];
    const stop = drawn.lift.listen(() => {
      const now = drawn.lift.now();
      heard.push(now === null ? undefined : drawnX({ shown: now.scheme }));
    });
    act(() => hand().moveTo(point(500)));
    stop();
    expect(hand().lifted).toBe(true);
    expect(hand()).toBe(drawn); // nothing was rendered for it
    expect(drawnX(hand())).toBe(was);
    expect(heard).toEqual([was + 500_000]);
  });

  it("draws it where the hand rests, and not while the hand moves on", () => {
    const { hand, was } = taken(true);
    act(() => hand().moveTo(point(500)));
    act(() => void vi.advanceTimersByTime(100));
    act(() => hand().moveTo(point(600)));
    act(() => void vi.advanceTimersByTime(100));
    expect(drawnX(hand())).toBe(was);
    act(() => void vi.advanceTimersByTime(100));
    expect(drawnX(hand())).toBe(was + 600_000);
  });

  it("keeps what comes from elsewhere until the hand rests or lays it down, in the order it came", () => {
    const { hand } = taken(true);
    const done: string[] = [];
    const comes = (what: string) => hand().lift.atRest(() => void done.push(what));
    comes("before");
    act(() => hand().moveTo(point(500)));
    comes("first");
    comes("second");
    expect(done).toEqual(["before"]);
    act(() => void vi.advanceTimersByTime(300));
    expect(done).toEqual(["before", "first", "second"]);
    comes("while it rests");
    act(() => hand().moveTo(point(600)));
    comes("last");
    expect(done.slice(3)).toEqual(["while it rests"]);
    act(() => hand().drop());
    expect(done.slice(4)).toEqual(["last"]);
  });

  it("drops it where the hand has it, whether or not it was drawn there", () => {
    const { hand, draw, was } = taken(true);
    act(() => hand().moveTo(point(500)));
    act(() => hand().drop());
    const [operations] = draw.mock.calls[0] ?? [];
    expect(operations?.[0]).toMatchObject({ kind: "container.move", id: "g1", xUm: was + 500_000 });
    expect(hand().lift.now()).toBeNull();
    act(() => void vi.advanceTimersByTime(1000));
    expect(hand().held).toBeNull();
  });

  it("lets go of it where it was", () => {
    const { hand, draw, was } = taken(true);
    act(() => hand().moveTo(point(500)));
    act(() => hand().letGo());
    act(() => void vi.advanceTimersByTime(1000));
    expect(drawnX(hand())).toBe(was);
    expect(hand().lifted).toBe(false);
    expect(draw).not.toHaveBeenCalled();
  });

  it("draws every move where the paper shows what is held otherwise, such as proposed", () => {
    const { hand, was } = taken(false);
    act(() => hand().moveTo(point(500)));
    expect(drawnX(hand())).toBe(was + 500_000);
    expect(hand().lift.now()).toBeNull();
  });
});
