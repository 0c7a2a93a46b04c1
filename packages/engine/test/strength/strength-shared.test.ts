import type { Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { strengthBasisFor } from "../../src/strength.ts";
import { strengthHelper } from "../../src/strength-helper.ts";
import { runShared } from "../../src/strength/run-shared.ts";
import type { ShareAsk } from "../../src/strength/share-asks.ts";
import { ShareElsewhere } from "../../src/strength/share-elsewhere.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import { strengthOf, type Strength } from "../../src/strength/strength-of.ts";
import { strengthShared } from "../../src/strength/strength-shared.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { drawnUnit } from "./drawn-unit.ts";

const basis = strengthBasisFor("IBC 2021");
const twenty = drawnUnit({ type: "1CC" });
const stacked = drawnUnit({
  type: "1CC",
  above: 1,
  openings: [{ face: "right", framed: true, fromMm: 1500, widthMm: 1200 }],
});
const blown: Scheme = {
  ...twenty,
  basis: {
    ...twenty.basis,
    hazards: sampleHazards({ wind: { mph: 130 }, snow: { psf: 0 }, seismic: { ss: 0.05, s1: 0.02 } }),
    soil: { class: "gravel" },
  },
};

/** A helper on the other side of a post: what goes there and back is cloned, as between threads, and comes later. */
function helper(answer = strengthHelper()): ShareElsewhere {
  const elsewhere: ShareElsewhere = new ShareElsewhere((posted) => {
    setImmediate(() => elsewhere.hear(structuredClone(answer(structuredClone(posted)))));
  });
  return elsewhere;
}

const judged = new Map<Scheme, Strength>();
function alone(scheme: Scheme): Strength {
  const known = judged.get(scheme) ?? strengthOf(scheme, basis, strengthMemory());
  judged.set(scheme, known);
  return known;
}
const shared = (scheme: Scheme, helpers: readonly ShareElsewhere[], tell?: (done: number, of: number) => void) =>
  new Promise<Strength>((settle, fail) => {
    runShared(strengthShared(scheme, basis, strengthMemory(), helpers.length, tell), helpers, { settle, fail });
  });

describe("a full run that is shared", () => {
  it.each([
    ["of a unit under gravity loads, with settlement", twenty, 1],
    ["of a stack with a framed opening, between three threads", stacked, 2],
    ["of a light unit in strong wind, which has to be held in runs that are refused as drawn", blown, 1],
  ])("says to the bit what one thread says: %s", async (_, scheme, helpers) => {
    const expected = alone(scheme);
    const given = await shared(
      scheme,
      Array.from({ length: helpers }, () => helper()),
    );
    expect(JSON.stringify(given)).toBe(JSON.stringify(expected));
  });

  it("is of runs without equilibrium, of held groups and of pads that settle in the samples above", () => {
    const [settled, held] = [alone(twenty), alone(blown)];
    if (!settled.accepted || !held.accepted) throw new Error("the samples are accepted");
    expect(held.refusedRuns.some((run) => run.held !== undefined)).toBe(true);
    expect(held.holds.length).toBeGreaterThan(0);
    expect(settled.results.some(({ governingRun }) => governingRun.includes("T "))).toBe(true);
  });

  it("tells after each set how many are solved", async () => {
    const told: string[] = [];
    await shared(twenty, [helper()], (done, of) => told.push(`${done}/${of}`));
    expect(told).toEqual([1, 2, 3, 4, 5, 6, 7].map((done) => `${done}/7`));
  });

  it.each([1, 2])("has each set solved once, and one of those for all runs by a helper: %i", async (helpers) => {
    const asked: ShareAsk[] = [];
    const listening = () => {
      const answer = strengthHelper();
      return helper((posted) => {
        asked.push(posted.ask);
        return answer(posted);
      });
    };
    await shared(twenty, Array.from({ length: helpers }, listening));
    const screened = asked.flatMap((ask) => (ask.work === "screened" ? [ask] : []));
    expect(screened.filter(({ names }) => names === undefined).map(({ set }) => set)).toEqual(["locks tied"]);
    expect(new Set(screened.map(({ set }) => set)).size).toBe(screened.length);
  });

  it("is solved by one thread where nobody helps", async () => {
    expect(JSON.stringify(await shared(twenty, []))).toBe(JSON.stringify(alone(twenty)));
  });

  it("fails as a whole with what a helper threw", async () => {
    const answer = strengthHelper();
    const failing = helper((posted) =>
      posted.ask.work === "screened" ? { turn: posted.turn, why: "singular" } : answer(posted),
    );
    await expect(shared(twenty, [failing])).rejects.toThrow("singular");
  });

  it("fails with the end of a helper, at once and ever after", async () => {
    const silent: ShareElsewhere = new ShareElsewhere(() => {
      setImmediate(() => silent.end(new Error("the thread ended")));
    });
    await expect(shared(twenty, [silent])).rejects.toThrow("the thread ended");
    expect(silent.isGone).toBe(true);
    await expect(shared(twenty, [silent])).rejects.toThrow("the thread ended");
  });
});

describe("a helper", () => {
  it("tells what it cannot do: nothing before a scheme is taken up", () => {
    expect(strengthHelper()({ turn: 1, ask: { work: "leans" } })).toEqual({
      turn: 1,
      why: "no scheme was taken up",
    });
  });
});
