import { describe, expect, it } from "vitest";
import type { ActionLoad } from "../../src/loads/action-case.ts";
import { buildingFrame } from "../../src/loads/building-frame.ts";
import { windLoading } from "../../src/loads/site-actions.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { ordinarySchemes } from "../strength/ordinary-schemes/ordinary-schemes.ts";
import { basis } from "../strength/one-run.ts";

const unitOf = (load: ActionLoad): string => ("containerId" in load ? load.containerId : load.elementId);

describe.each(Object.entries(ordinarySchemes).slice(0, 6))("wind told on one unit of %s", (_, scheme) => {
  const { hazards } = scheme.basis.hazards === null ? { hazards: sampleHazards({}) } : scheme.basis;
  const building = buildingFrame(scheme);
  if (hazards === null || building === undefined) throw new Error("the sample has containers and wind");
  const whole = windLoading(scheme, building, hazards, basis.loads);

  it.each(scheme.containers.map(({ id }) => id))("is what the whole has on %s, case by case, to the bit", (id) => {
    const own = windLoading(scheme, building, hazards, basis.loads, [id]);
    expect(own.cases).toEqual(
      whole.cases.map((one) => ({ ...one, loads: one.loads.filter((load) => unitOf(load) === id) })),
    );
    expect(own.cases.some(({ loads }) => loads.length > 0)).toBe(true);
    expect(own.pressures).toEqual(whole.pressures);
  });
});
