import { presenceLastsMs } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { PresenceBoard, type Word } from "../../src/realtime/presence-board.ts";

const projectId = "8a7c3f7e-7f0b-4c5d-9a3e-0c6f3c2b1a00";
const word = (connection: string, more: Partial<Word> = {}): Word => ({
  ...{ projectId, connection, personId: projectId, name: connection, role: "architect", presence: null, gone: false },
  ...more,
});

function board() {
  let nowMs = 0;
  const held = new PresenceBoard(() => nowMs);
  return {
    held,
    wait: (ms: number) => void (nowMs += ms),
    names: () => held.people(projectId).map(({ name }) => name),
  };
}

describe("PresenceBoard", () => {
  it("forgets whoever was not heard of for 15 s, and says in which project", () => {
    const { held, wait, names } = board();
    held.take(word("a"));
    wait(presenceLastsMs / 2);
    held.take(word("b"));
    wait(presenceLastsMs / 2 + 1);
    expect([...held.expire()]).toEqual([projectId]);
    expect(names()).toEqual(["b"]);
    expect(presenceLastsMs).toBe(15_000);
  });

  it("keeps whoever speaks again in time", () => {
    const { held, wait, names } = board();
    for (let n = 0; n < 5; n += 1) {
      held.take(word("a"));
      wait(presenceLastsMs - 1);
      expect([...held.expire()]).toEqual([]);
    }
    expect(names()).toEqual(["a"]);
  });

  it("forgets at once whoever says that they go", () => {
    const { held, names } = board();
    held.take(word("a"));
    held.take(word("a", { gone: true }));
    expect(names()).toEqual([]);
  });

  it("takes no word from another process that it does not know", () => {
    const { held, names } = board();
    expect(held.takeFrom({ ...word("a"), projectId: "x" })).toBeUndefined();
    expect(held.takeFrom({ ...word("a"), extra: 1 })).toBeUndefined();
    expect(held.takeFrom(word("b"))).toBe(projectId);
    expect(names()).toEqual(["b"]);
  });
});
