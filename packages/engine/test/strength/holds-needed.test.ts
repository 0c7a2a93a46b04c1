import type { Lock, Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { strength } from "../../src/strength.ts";
import type { Strength } from "../../src/strength/strength-of.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { drawnUnit } from "./drawn-unit.ts";

const fittings = ["front-right", "front-left", "door-right", "door-left"] as const;
const locked = (scheme: Scheme): Scheme => ({
  ...scheme,
  locks: scheme.containers
    .flatMap(({ id }, n) =>
      fittings.map((fitting): Lock => ({
        id: `${id}-${fitting}`,
        tag: "L",
        containerId: id,
        fitting,
        kind: n === 0 ? "hold-down" : "lock",
      })),
    )
    .toSorted((a, b) => (a.id < b.id ? -1 : 1)),
});
const blown = (mph: number, scheme: Scheme): Scheme => ({
  ...scheme,
  basis: {
    ...scheme.basis,
    hazards: sampleHazards({ wind: { mph }, snow: { psf: 0 }, seismic: { ss: 0.05, s1: 0.02 } }),
    soil: { class: "gravel" },
  },
});
function judged(scheme: Scheme): Extract<Strength, { accepted: true }> {
  const answer = strength(scheme);
  if (!answer.accepted) throw new Error("the sample is accepted");
  return answer;
}

// One 20 ft unit of 2150 kg on pads. 0.9·2150·9.81 = 18.98 kN of least dead load against the wind on its side and the suction
// on its roof: 130 mph in exposure C turns it over (by hand: q 1.50 kPa, side 6.058·2.591·1.3·0.85·1.5 = 26 kN at 1.3 m,
// 33.9 kN·m; suction about 1.2·1.5·14.8 = 26 kN at 1.13 m: both far beyond 18.98·1.13 = 21 kN·m).
describe("a light unit in strong wind", () => {
  const bare = drawnUnit({ type: "1CC", imposedPa: 0 });
  const single = { ...bare, loads: [] };
  const loose = judged(blown(130, single));
  const held = judged(blown(130, locked(single)));

  it("does not work where it only bears, and each need names its places, its force and its run", () => {
    expect(loose.units[0]?.verdict).toBe("does not work");
    const uplift = loose.holds.find(({ kind }) => kind === "uplift");
    expect(uplift?.places.toSorted()).toEqual(["door left", "door right", "front left", "front right"]);
    expect(uplift?.forceN).toBeGreaterThan(5000);
    expect(uplift?.run).toMatch(/W/);
    expect(loose.holds.map(({ kind }) => kind)).toContain("sliding");
  });

  it("needs nothing more once hold-downs are drawn at its four fittings, which are then checked", () => {
    expect(held.holds).toEqual([]);
    expect(held.units[0]?.reasons.map(({ kind }) => kind)).not.toContain("hold not drawn");
    const connections = held.results.filter(({ element }) => element === "made connection");
    expect(connections).toHaveLength(4);
    expect(Math.max(...connections.map(({ utilisation }) => utilisation ?? Infinity))).toBeGreaterThan(0.01);
  });

  it("pulls as hard at a hold-down drawn as at one that was missing, to 5 %", () => {
    const missing = loose.holds.find(({ kind }) => kind === "uplift")?.forceN ?? NaN;
    const most = Math.max(
      ...held.results
        .filter(({ element }) => element === "made connection")
        .map(({ working }) => working?.symbols.find(({ symbol }) => symbol === "demand")?.value ?? 0),
    );
    // the demand on the weld has the push in it as well
    expect(most).toBeGreaterThan(0.95 * missing);
  });
});

// Units are lifted most before their fit-out: 2 kPa of finishes hold nothing down on the day they arrive.
describe("a unit with heavy finishes in strong wind", () => {
  const single = { ...drawnUnit({ type: "1CC", imposedPa: 0 }), loads: [] };
  const [{ id: containerId } = { id: "" }] = single.containers;
  const finished: Scheme = {
    ...single,
    loads: [{ id: "f", containerId, surface: "floor", case: "finish", pressurePa: 2000 }],
  };
  const pullOf = (scheme: Scheme): number =>
    judged(blown(130, scheme)).holds.find(({ kind }) => kind === "uplift")?.forceN ?? NaN;

  it("pulls as hard as one without them, in a run of the bare unit; 2 % for the lean its finishes add", () => {
    const uplift = judged(blown(130, finished)).holds.find(({ kind }) => kind === "uplift");
    expect(uplift?.run).toContain("D bare");
    expect(Math.abs((uplift?.forceN ?? NaN) / pullOf(single) - 1)).toBeLessThan(0.02);
  });
});

describe("a stack with stock locks", () => {
  it("has each lock checked at allowable level against breaking over five, pull and shear together", () => {
    const answer = judged(blown(115, locked(drawnUnit({ type: "1CC", above: 1 }))));
    const locks = answer.results.filter(({ element }) => element === "lock");
    expect(locks).toHaveLength(4);
    for (const { governingRun, covered, working } of locks) {
      expect(governingRun).toMatch(/0\.6W|0\.45W|0\.7E/);
      expect(covered).toBe("bounded");
      expect(working?.notes.join(" ")).toContain("no code-listed connector");
    }
  });
});

// Wind on the side of two 40 ft units sways their open door ends as portals of posts, header and sill; doors welded shut are a
// wall there (the code counts them then, IBC 3115.8.5.3, from memory).
describe("doors welded shut", () => {
  const stack = blown(105, locked(drawnUnit({ above: 1 })));
  const welded: Scheme = {
    ...stack,
    containers: stack.containers.map((one) => ({ ...one, doors: "welded shut" })),
  };
  const sillUse = (scheme: Scheme): number =>
    Math.max(
      ...judged(scheme)
        .results.filter(({ id }) => id.startsWith("u1 sill door"))
        .map(({ utilisation }) => utilisation ?? Infinity),
    );

  it("relieve the door sill of the lower unit by half and more, and are held against the code's 843 lb/ft", () => {
    expect(sillUse(welded)).toBeLessThan(0.5 * sillUse(stack));
    const doors = judged(welded).results.filter(({ place }) => place === "doors welded shut");
    expect(doors.map(({ ownerId }) => ownerId).toSorted()).toEqual(["u1", "u2"]);
    for (const { limitState, working } of doors) {
      expect(limitState).toBe("wall shear by the code");
      // 843 lb/ft · 14.5939 N/m per lb/ft = 12.30 N/mm
      expect(working?.limit?.value).toBeCloseTo(12.3, 1);
    }
  });
});
