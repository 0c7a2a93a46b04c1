import type { Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { strength } from "../../src/strength.ts";
import { knownRun, saidOf } from "../../src/strength/known-run.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { drawnUnit } from "./drawn-unit.ts";

const twenty = drawnUnit({ type: "1CC" });
const windy = sampleHazards({ wind: { mph: 130 }, snow: { psf: 0 }, seismic: { ss: 0.05, s1: 0.02 } });
/** Some of its runs are refused as drawn: what was held, and what is unbounded, is told as well. */
const blown: Scheme = { ...twenty, basis: { ...twenty.basis, hazards: windy, soil: { class: "gravel" } } };
const said = strength(blown);
const known = knownRun(blown, said);

const fieldsTurned = ({ id, tag, ...rest }: Scheme["pads"][number]): Scheme["pads"][number] => ({ ...rest, tag, id });

describe("a run that is known", () => {
  it("is told to the bit, but for its workings", () => {
    const { accepted, results, ...rest } = said.accepted ? said : { accepted: false, results: [] };
    expect(accepted).toBe(true);
    expect(results.some(({ working }) => working !== undefined)).toBe(true);
    const expected = { accepted, ...rest, results: results.map((one) => ({ ...one, working: undefined })) };
    expect(saidOf(blown, known)).toEqual(expected);
  });

  it("is of the drawing whatever the order of its elements and fields", () => {
    const turned: Scheme = { ...blown, pads: blown.pads.map(fieldsTurned).toReversed() };
    expect(JSON.stringify(turned)).not.toBe(JSON.stringify({ ...blown, pads: blown.pads.toReversed() }));
    expect(saidOf(turned, known)).toBeDefined();
  });

  it("is of no other drawing, no other hazards, and no other engine", () => {
    expect(saidOf({ ...blown, basis: { ...blown.basis, hazards: null } }, known)).toBeUndefined();
    expect(
      saidOf({ ...blown, containers: blown.containers.map((unit) => ({ ...unit, xUm: 1 })) }, known),
    ).toBeUndefined();
    expect(saidOf(blown, { ...known, of: known.of.replace(/^\S+/, "0.0.0") })).toBeUndefined();
    expect(saidOf(blown, undefined)).toBeUndefined();
  });
});
