import { describe, expect, it } from "vitest";
import { liveActs } from "../../src/services/live-acts.ts";
import type { DraftActRow } from "../../src/store/draft-rows.ts";

const row = (id: string, undoes: string | null): DraftActRow => ({
  ...{ id, number: 0, entry: 0, personId: "", personName: "", bodyDigest: "", contentDigest: "" },
  ...{ undoes, writes: [], operations: [], inverse: [] },
});

/** Acts in the order they were done: `b` is an act, `-b` an undo of it under the id `-b`. */
const liveOf = (...done: string[]) => {
  const rows = done.map((id) => row(id, id.startsWith("-") ? id.slice(1) : null));
  return liveActs(rows.reverse()).map(({ id }) => id);
};

describe("liveActs", () => {
  it("keeps acts that nobody took back, latest first", () => expect(liveOf("a", "b")).toEqual(["b", "a"]));
  it("drops an act and its undo together", () => expect(liveOf("a", "b", "-b")).toEqual(["a"]));
  it("keeps an undo whose act is not among them: it changed something", () =>
    expect(liveOf("-x", "a")).toEqual(["a", "-x"]));
  it("brings an act back when its undo is undone", () => expect(liveOf("a", "-a", "--a")).toEqual(["a"]));
  it("drops a chain of undo, redo and undo again", () => expect(liveOf("a", "-a", "--a", "---a")).toEqual([]));
  it("drops undos in the reverse order of the acts", () => expect(liveOf("a", "b", "-b", "-a")).toEqual([]));
});
