import { leastShared, ShareElsewhere, type Strength, type StrengthWhileDrawing } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { SharedRun } from "../../src/worker/shared-run.ts";
import { helpersOn } from "../../src/worker/start-helpers.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const unitsOf = (count: number) =>
  schemeOf(Array.from({ length: count }, (_, n) => unitAt(`g${n}`, `G${n}`, 7000 * n, 0, 0)));
const answer: Strength = { accepted: false, refusals: [] };

/** Which way each run went; `shared` is what a shared one does. */
function drawing(shared: () => Strength = () => answer) {
  const went: string[] = [];
  return {
    went,
    *fullShared(_: unknown, helping: number): ReturnType<StrengthWhileDrawing["fullShared"]> {
      went.push(helping === 0 ? "alone" : `with ${helping}`);
      if (helping === 0) return answer;
      yield { helper: 0, ask: { work: "leans" } };
      return shared();
    },
  };
}

describe("SharedRun", () => {
  it("shares what is worth it with helpers that are started once, and does less alone", async () => {
    const ways = drawing();
    let started = 0;
    const run = new SharedRun(ways, () => {
      started += 1;
      return [new ShareElsewhere(() => undefined)];
    });
    await run.full(unitsOf(leastShared - 1));
    expect(started).toBe(0);
    await run.full(unitsOf(leastShared));
    await run.full(unitsOf(leastShared));
    expect(ways.went).toEqual(["alone", "with 1", "with 1"]);
    expect(started).toBe(1);
  });

  it("does it alone where a browser starts no helper", async () => {
    const ways = drawing();
    const run = new SharedRun(ways, () => {
      throw new Error("no worker in a worker");
    });
    expect(await run.full(unitsOf(leastShared))).toBe(answer);
    expect(ways.went).toEqual(["alone"]);
  });

  it("does it alone once a helper has gone, and ever after", async () => {
    const helper = new ShareElsewhere(() => undefined);
    const ways = drawing(() => {
      helper.end(new Error("gone"));
      throw new Error("gone");
    });
    const run = new SharedRun(ways, () => [helper]);
    expect(await run.full(unitsOf(leastShared))).toBe(answer);
    await run.full(unitsOf(leastShared));
    expect(ways.went).toEqual(["with 1", "alone", "alone"]);
  });

  it("tells what the engine threw in a helper that is there", async () => {
    const ways = drawing(() => {
      throw new Error("singular");
    });
    const run = new SharedRun(ways, () => [new ShareElsewhere(() => undefined)]);
    await expect(run.full(unitsOf(leastShared))).rejects.toThrow("singular");
    expect(ways.went).toEqual(["with 1"]);
  });
});

it.each([
  [1, 0],
  [2, 1],
  [4, 2],
  [16, 2],
])("of %i cores, %i threads help", (cores, helpers) => {
  expect(helpersOn(cores)).toBe(helpers);
});
