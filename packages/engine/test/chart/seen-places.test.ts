import { describe, expect, it } from "vitest";
import type { ChartAnswer } from "../../src/chart/chart.ts";
import type { Finding } from "../../src/chart/judged.ts";
import { SeenPlaces } from "../../src/chart/seen-places.ts";
import { assumptionSets } from "../../src/strength/assumption-sets.ts";

// A rail at two places, with uses written down here: where it is over, it is best under the first set and worst under the third.

const sets = assumptionSets.slice(0, 3).map((set) => ({ set }));
const [play, tied, soft] = sets;
if (play === undefined || tied === undefined || soft === undefined) throw new Error("there are three sets");

const rail = (uses: readonly number[]): Finding => ({
  id: "u1 rail",
  ownerId: "u1",
  element: "bottom side rail",
  place: "bottom side rail right",
  limitState: "axial force with bending",
  utilisation: Math.max(...uses),
  governingRun: "1.4D",
  assumptions: soft.set.id,
  held: [],
  envelope: Object.fromEntries(uses.map((use, n) => [sets[n]?.set.id, use])),
  covered: "checked",
});
const why = (use: number) => ({ partId: "u1 rail", use, run: "1.4D" });
const over: ChartAnswer = {
  verdict: "does not work",
  why: { kind: "part", because: "over", assumptions: soft.set.id, ...why(1.5) },
};
const works: ChartAnswer = { verdict: "works with steel", why: { kind: "within", ...why(0.9) } };
const at = (centreMm: number, widthMm: number) => ({ framed: true, place: { centreMm, widthMm } });

function seen(): SeenPlaces {
  const places = new SeenPlaces();
  places.noteWhole(at(3000, 600), works, [rail([0.6, 0.9, 0.8])]);
  places.noteWhole(at(3000, 2400), over, [rail([1.2, 1.3, 1.5])]);
  return places;
}

describe("what was seen along a side", () => {
  it("says nothing of sets before a place was looked at under all", () => {
    expect(new SeenPlaces().bestOf(at(3000, 600), sets)).toBeUndefined();
    expect(new SeenPlaces().worstOf(at(3000, 600), sets)).toBeUndefined();
  });

  it("names the set in which parts were worst at the nearest place, and best at the nearest that did not work", () => {
    expect(seen().worstOf(at(3100, 700), sets)).toBe(tied);
    expect(seen().worstOf(at(3100, 2000), sets)).toBe(soft);
    expect(seen().bestOf(at(3100, 700), sets)).toBe(play);
    expect(seen().bestOf(at(3100, 700), [tied, soft])).toBe(tied);
  });

  it("takes a part to be over under a set that was not asked where it stands a tenth beyond, by its uses nearby", () => {
    // scaled from 1.2 under the first set: at 1.1 the others would have 1.19 and 1.38; from 1.5 under the third, at 1.3 the first 1.04
    expect(seen().isClearlyOver(at(3000, 2000), rail([1.1]), [play], [tied, soft])).toBe(true);
    const third: Finding = { ...rail([]), envelope: { [soft.set.id]: 1.3 } };
    expect(seen().isClearlyOver(at(3000, 2000), third, [soft], [play, tied])).toBe(false);
    expect(new SeenPlaces().isClearlyOver(at(3000, 2000), rail([1.1]), [play], [tied])).toBe(false);
  });

  it("starts from the answer of the nearest place", () => {
    const places = seen();
    expect(places.isLikelyOver(at(3000, 2000))).toBe(false);
    places.note(at(3000, 600), works);
    places.note(at(3000, 2400), over);
    expect([places.isLikelyOver(at(3000, 2000)), places.isLikelyOver(at(3000, 900))]).toEqual([true, false]);
  });
});
