import { describe, expect, it } from "vitest";
import { condensationCache, solveBuilding } from "../../src/building.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { lineForces, oneRun, ownWeight, pressed } from "./one-run.ts";

// The solution recovers the inside of a container by its own elimination (analysis/recover-unit.ts); here the same forces are
// sums of influences. Both must agree on every line and sheet, also where bearings have opened and the unit is turned.
describe.each([
  ["a stack on four pads", drawnUnit({ above: 1 })],
  [
    "a unit turned across another, with a framed opening below",
    (() => {
      const drawn = drawnUnit({ above: 1, openings: [{ face: "right", framed: true, fromMm: 1603.5, widthMm: 3000 }] });
      return { ...drawn, containers: drawn.containers.map((one, n) => (n === 1 ? { ...one, turnMdeg: 90_000 } : one)) };
    })(),
  ],
])("forces inside %s", (_, scheme) => {
  const cases = [ownWeight(scheme, 40_000), pressed(scheme, 3400)];
  const { set, solved } = oneRun(scheme, cases);
  const { combos } = solveBuilding(
    { ...set.built.model, combos: { one: { own: 1, "floor load": 1 } } },
    condensationCache(1e8),
  );
  const { one } = combos;
  if (one === undefined || "refused" in one) throw new Error("the sample stands");

  it.each(scheme.containers.map(({ id }) => id))(
    "are those of the recovered inside of %s, to 1 in 10⁷ of the largest",
    (id) => {
      const { memberEndForces, panelFlows } = one.unit(id);
      const largest = Math.max(...Object.values(memberEndForces).flat().map(Math.abs));
      for (const [line, ours] of lineForces(solved, set, id))
        ours.forEach((force, n) =>
          expect(Math.abs(force - (memberEndForces[line]?.[n] ?? NaN)), `${line} ${n}`).toBeLessThan(1e-7 * largest),
        );
      const { values, panelAt } = solved.flows(id);
      const flows = Math.max(...Object.values(panelFlows).map(Math.abs));
      for (const [sheet, flow] of Object.entries(panelFlows))
        expect(Math.abs((values[panelAt(sheet)] ?? NaN) - flow), sheet).toBeLessThan(1e-7 * flows);
    },
  );
});
