import { describe, expect, it, vi } from "vitest";
import { checkBasisOf } from "../../src/checks/check-basis.ts";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import { findingOf } from "../../src/chart/judged.ts";
import { RestOfBuilding } from "../../src/chart/rest-of-building.ts";
import { Surroundings } from "../../src/chart/surroundings.ts";
import { trial, TrialOf } from "../../src/chart/trial.ts";
import { trialGround } from "../../src/chart/trial-ground.ts";
import { triedOpening, withTried } from "../../src/chart/trial-opening.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import { strengthOf } from "../../src/strength/strength-of.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { doorRequest } from "./drawn-chart.ts";

// A chart solves a building again with one container condensed anew, under the runs that govern. The full solution of the same
// scheme stands beside it: equal where they solve the same, never less.

const basis = {
  loads: designBasisFor("IBC 2021"),
  factored: checkBasisOf("IBC 2021", "LRFD"),
  allowable: checkBasisOf("IBC 2021", "ASD"),
};
const scheme = drawnUnit({ type: "1CC", above: 1 });
const first = { centreMm: 3000, widthMm: 900 };
const answer = trialGround(scheme, doorRequest, first, basis, strengthMemory());
if (!answer.accepted) throw new Error("the sample is accepted");
const { ground } = answer;
const solvedJoined = vi.spyOn(RestOfBuilding.prototype, "solve");
const surroundings = (model: (typeof ground.sets)[number]["built"]["model"]) =>
  new Surroundings(model, ground.unit.id, ground.bearings, ground.memory.cache);

/** Of a use: what two solutions with stiff links may differ by, as condensed and uncondensed ones may. */
const ROUNDING = 1e-7;

function bothWays(place: typeof first) {
  const opening = triedOpening(doorRequest, place.centreMm, place.widthMm);
  const looking = { besides: ground.neighbours, leans: "looked at" } as const;
  const { worsts } = new TrialOf(ground, [opening], ground.sets, looking).under(ground.sets);
  // the full analysis tells what is wholly checked of a part within the result of the part
  const tried = worsts.filter(({ part }) => part.sureOf === undefined).map(findingOf);
  const full = strengthOf(withTried(scheme, doorRequest, place.centreMm, place.widthMm), basis, strengthMemory());
  if (!full.accepted) throw new Error("the sample is accepted");
  const known = new Map(full.results.map((result) => [result.id, result.utilisation ?? Infinity]));
  return tried.map(({ id, ownerId, utilisation = Infinity }) => ({
    ...{ id, ownerId },
    ...{ tried: utilisation, full: known.get(id) ?? NaN },
  }));
}

describe("a building solved again with one container condensed anew", () => {
  it("has the uses of the full solution in its first place, part by part, to nine digits, those of the unit above as well", () => {
    const parts = bothWays(first);
    expect(parts.length).toBeGreaterThan(30);
    expect(parts.filter(({ ownerId }) => ownerId === "u2").length).toBeGreaterThan(20);
    for (const { id, tried, full } of parts) expect([id, tried / full]).toEqual([id, expect.closeTo(1, 9)]);
  });

  it("in other places never asks more than the full solution, and of the most used parts the same to 1 %", () => {
    for (const place of [
      { centreMm: 1500, widthMm: 900 },
      { centreMm: 3000, widthMm: 2400 },
    ]) {
      const parts = bothWays(place);
      for (const { id, tried, full } of parts) expect([id, tried <= full + ROUNDING]).toEqual([id, true]);
      const used = parts.toSorted((a, b) => b.full - a.full).slice(0, 5);
      for (const { id, tried, full } of used) {
        expect([id, tried > 0.99 * full]).toEqual([id, true]);
      }
    }
  });

  it("is joined to the rest of the building, condensed, as it is solved within the whole, to nine digits", () => {
    const openings = [triedOpening(doorRequest, 2200, 1600)];
    const afresh = ground.sets.map((one) => ({ ...one, around: surroundings(one.built.model) }));
    const whole = trial({ ...ground, sets: afresh }, openings, afresh).worsts;
    const joined = trial(ground, openings, ground.sets).worsts;
    const again = trial(ground, openings, ground.sets).worsts;
    expect(joined.length).toBeGreaterThan(30);
    for (const found of [joined, again])
      found.forEach(({ part, envelope }, n) => {
        const uses = whole[n]?.envelope ?? new Map<string, number>();
        expect(part.id).toBe(whole[n]?.part.id);
        for (const [set, use] of envelope)
          expect([part.id, set, use / (uses.get(set) ?? NaN)]).toEqual([part.id, set, expect.closeTo(1, 9)]);
      });
    expect(solvedJoined).toHaveBeenCalled();
    expect(
      solvedJoined.mock.results.some(({ value }) => Array.isArray(value) && value.every((one) => one !== undefined)),
    ).toBe(true);
  });
});
