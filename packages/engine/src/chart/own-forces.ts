import type { CondensationCache } from "../analysis/condensation-cache.ts";
import { recoverPart } from "../analysis/condense.ts";
import { reducedUnder } from "../analysis/unit-loads.ts";
import { memberEndForcesOfSides, toLocalComponents } from "../elements/member.ts";
import { panelFlow } from "../elements/shear-panel.ts";
import type { Triple } from "../model/analytical-model.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { FORCES_OF_LINE } from "../strength/inner-forces.ts";
import type { LineForces, SheetFlows } from "../strength/solve-runs.ts";

/** A run with six movements of each retained node of the container, in its own axes. */
export type SolvedSide = { readonly factors: Readonly<Record<string, number>>; readonly retained: Float64Array };

/** Forces of its lines and flows of its sheets, in one array. */
export type OwnForces = LineForces & SheetFlows;

/**
 * Forces inside one container in several runs, recovered from the movements themselves: for a container that is solved for
 * a few runs and left, where influences of every bearing point would cost more.
 */
export function ownForces(unit: PlacedUnit, sides: readonly SolvedSide[], cache: CondensationCache): OwnForces[] {
  const condensation = cache.part(unit.fragment);
  if (!condensation.stable) throw new Error(`container ${unit.id} is a mechanism`);
  const { condensed } = condensation;
  const { part, factor } = condensed;
  const combos = sides.map(({ factors }) => factors);
  const reduced = reducedUnder(cache.loadsOn(unit, condensed), combos, factor.tree.equations);
  const movements = recoverPart(
    condensed,
    reduced,
    sides.map((side) => side.retained),
  );
  const { members, panels } = part.frame;
  const places = placesOf(members.keys(), panels.keys());
  const all = sides.map(() => new Float64Array(members.size * FORCES_OF_LINE + panels.size));
  const uniform = combos.map((combo) => uniformLoads(unit, combo));
  for (const [id, member] of members) {
    const local = uniform.map((on) => toLocalComponents(member.facts.axes, on.get(id) ?? NO_LOAD));
    const place = places.get(id) ?? 0;
    memberEndForcesOfSides(member, movements, local).forEach((forces, s) =>
      all[s]?.set(forces.subarray(0, FORCES_OF_LINE), place),
    );
  }
  for (const [id, panel] of panels) {
    const place = places.get(id) ?? 0;
    movements.forEach((movement, s) => all[s]?.fill(panelFlow(panel, movement), place, place + 1));
  }
  const at = (id: string): number => {
    const place = places.get(id);
    if (place === undefined) throw new RangeError(`container ${unit.id} has no line or sheet ${id}`);
    return place;
  };
  return all.map((values) => ({ values, at, panelAt: at }));
}

const NO_LOAD: Triple = [0, 0, 0];

function placesOf(lines: Iterable<string>, panels: Iterable<string>): ReadonlyMap<string, number> {
  const places = new Map<string, number>();
  let next = 0;
  for (const id of lines) {
    places.set(id, next);
    next += FORCES_OF_LINE;
  }
  for (const id of panels) places.set(id, next++);
  return places;
}

function uniformLoads({ loads }: PlacedUnit, combo: Readonly<Record<string, number>>): Map<string, Triple> {
  const sum = new Map<string, Triple>();
  for (const [name, { beam_udl = [] }] of Object.entries(loads)) {
    const factor = combo[name] ?? 0;
    if (factor === 0) continue;
    for (const { beam, q } of beam_udl) {
      const [x, y, z] = sum.get(beam) ?? NO_LOAD;
      sum.set(beam, [x + factor * q[0], y + factor * q[1], z + factor * q[2]]);
    }
  }
  return sum;
}
