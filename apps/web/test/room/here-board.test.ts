import type { Presence } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { handsAt } from "../../src/drawing/others/other-hands.ts";
import { HereBoard } from "../../src/room/here-board.ts";

const points = (xMm: number): Presence => ({
  ...{ sheet: 1, selected: null, dragging: null },
  pointer: { projection: "plan", at: { xMm, yMm: 0, zMm: 0 } },
});
const drags = (xMm: number): Presence => ({ ...points(xMm), dragging: [{ kind: "beam.remove", id: "b1" }] });
const someone = (personId: string, presence: Presence) => ({
  ...{ connection: `of ${personId}`, personId, name: personId, role: "engineer" as const, presence },
});

function listened() {
  const board = new HereBoard("me");
  let told = 0;
  board.listen(() => (told += 1));
  return { board, told: () => told };
}

describe("HereBoard", () => {
  it("tells nobody of one's own hand, which the line says back", () => {
    const { board, told } = listened();
    board.put([someone("me", points(1))]);
    board.put([someone("me", points(2))]);
    expect(told()).toBe(0);
    expect(board.now()).toEqual([]);
  });

  it("tells of another's pointer, and not of one that rests", () => {
    const { board, told } = listened();
    board.put([someone("me", points(1)), someone("ines", points(1))]);
    board.put([someone("me", points(2)), someone("ines", points(1))]);
    expect(told()).toBe(1);
    board.put([someone("ines", points(2))]);
    expect(told()).toBe(2);
  });

  it("gives the same drags while only a pointer moves, so that no ghost is drawn anew", () => {
    const { board } = listened();
    board.put([someone("ines", drags(1))]);
    const first = board.dragged();
    expect(first).toEqual([[{ kind: "beam.remove", id: "b1" }]]);
    board.put([someone("ines", drags(2))]);
    expect(board.dragged()).toBe(first);
    board.put([someone("ines", points(2))]);
    expect(board.dragged()).toEqual([]);
  });
});

describe("handsAt(here, me, sheet)", () => {
  it("gives the same list until somebody moves", () => {
    const { board } = listened();
    const hands = handsAt(board, "me", 1);
    board.put([someone("ines", points(1))]);
    const first = hands.now();
    expect(first.map(({ name }) => name)).toEqual(["ines"]);
    expect(hands.now()).toBe(first);
    board.put([someone("ines", points(5))]);
    expect(hands.now()).not.toBe(first);
  });
});
