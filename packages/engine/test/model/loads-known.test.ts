import { describe, expect, it } from "vitest";
import { analyse } from "../../src/load-path/analysis.ts";
import { evenPatch, type ActionCase } from "../../src/loads/action-case.ts";
import { buildModel, type BuiltModel } from "../../src/model/build-model.ts";
import { drawnUnit, type DrawnOpening } from "../strength/drawn-unit.ts";
import { ownWeight } from "../strength/one-run.ts";

type Drawn = ReturnType<typeof drawnUnit>;

const built = (scheme: Drawn, weightN: number): BuiltModel =>
  buildModel(analyse(scheme), [ownWeight(scheme, weightN), onRoof(scheme)], {});

const onRoof = (scheme: Drawn): ActionCase => ({
  id: "roof",
  symbol: "Lr",
  loads: scheme.containers.map(({ id }) => ({
    kind: "on",
    containerId: id,
    surface: "roof",
    patch: evenPatch({ u0: 0, u1: 4000, v0: 0, v1: 2000 }, 1000),
  })),
});

const window = (fromMm: number): readonly DrawnOpening[] => [{ face: "right", framed: true, fromMm, widthMm: 1200 }];
const schemes = {
  "a 20 ft unit": drawnUnit({ type: "1CC" }),
  "two of them, the lower with a window": drawnUnit({ type: "1CC", above: 1, openings: window(1500) }),
  "a 40 ft high-cube unit": drawnUnit({ type: "1AAA" }),
};

describe("loads on containers, kept from one model to the next", () => {
  it.each(Object.entries(schemes))("are those of a model that knows none: %s", (_, scheme) => {
    // a weight nobody asked for before is worked out, and by it the kept ones of the same scheme are proportionate
    const [once, again, twice] = [built(scheme, 40_000), built(scheme, 40_000), built(scheme, 80_000)];
    once.model.units.forEach((unit, n) => {
      const [known, fresh] = [again.model.units[n], twice.model.units[n]];
      expect(known?.loads).toBe(unit.loads);
      expect(known?.loadsKey).toBe(unit.loadsKey);
      expect(fresh?.loadsKey).not.toBe(unit.loadsKey);
      const own = Object.keys(unit.loads)[0] ?? "";
      const doubled = (unit.loads[own]?.beam_udl ?? []).map(({ beam, q: [x, y, z] }) => ({
        beam,
        q: [2 * x, 2 * y, 2 * z],
      }));
      expect(doubled.length).toBeGreaterThan(0);
      expect(fresh?.loads[own]?.beam_udl).toEqual(doubled);
    });
  });

  it("stay with a container when a window of another is moved", () => {
    const [before, after] = [1500, 2100].map((fromMm) =>
      built(drawnUnit({ type: "1CC", above: 1, openings: window(fromMm) }), 40_000),
    );
    const loads = [before, after].map((one) => one?.model.units.map((unit) => unit.loads) ?? []);
    expect(loads[1]?.[1]).toBe(loads[0]?.[1]);
    expect(loads[1]?.[0]).not.toBe(loads[0]?.[0]);
  });
});
