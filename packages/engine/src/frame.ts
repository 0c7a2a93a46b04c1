import { combinedLoads, type CombinedLoads } from "./analysis/combined-loads.ts";
import { settleContact } from "./analysis/contact.ts";
import { drivenMovement } from "./analysis/driven-movement.ts";
import type { FrameRefusal, FrameResult, FrameSolution } from "./analysis/frame-result.ts";
import { unresistedLoad } from "./analysis/unresisted-load.ts";
import { prepare, type Preparation } from "./analysis/prepare.ts";
import { recoverFrame } from "./analysis/recover-frame.ts";
import { refusal } from "./analysis/refusal.ts";
import { solveMovements } from "./analysis/solve-movement.ts";
import { allClosed } from "./analysis/system.ts";
import type { AnalyticalModel } from "./model/analytical-model.ts";
import { frameSystem, type FrameSystem } from "./analysis/frame-system.ts";

/**
 * Solves every combination of a line model; each is one load vector with its own contact state. Units N, mm, MPa, radians.
 * A combination without equilibrium is refused in words; a model that `readAnalyticalModel` does not pass throws.
 */
export function solveFrame(model: AnalyticalModel): FrameResult {
  const frame = frameSystem(model);
  const closed = prepare(frame.system, allClosed(frame.system));
  const combos = Object.entries(model.combos).map(([name, combo]): [string, FrameSolution | FrameRefusal] => {
    return [name, solveCombination(frame, model, closed, combinedLoads(frame, model, combo))];
  });
  return { combos: Object.fromEntries(combos) };
}

function solveCombination(
  frame: FrameSystem,
  model: AnalyticalModel,
  closed: Preparation,
  loads: CombinedLoads,
): FrameSolution | FrameRefusal {
  if (!closed.stable)
    return refusal("No equilibrium, a mechanism", drivenMovement(closed.movements, loads), frame.nodeIds);
  const [loose] = loads.unresisted;
  if (loose !== undefined) return memberRefusal(frame, loose);
  const [basis] = solveMovements(closed.prepared, [loads]);
  if (basis === undefined) throw new Error("one load vector gives one movement");
  const [outcome] = settleContact(frame.system, closed.prepared, [loads], [basis]);
  if (outcome === undefined) throw new Error("one load vector gives one outcome");
  if (!outcome.settled) {
    const reason = outcome.movement
      ? "No equilibrium once bearings open"
      : "No equilibrium found: the bearings do not settle";
    return refusal(reason, outcome.movement, frame.nodeIds);
  }
  const idle = unresistedLoad(outcome.prepared, loads);
  if (idle !== null) return refusal("No equilibrium, a load on something free to move", idle, frame.nodeIds);
  return recoverFrame(frame, model, outcome, loads);
}

function memberRefusal({ members, nodeIds }: FrameSystem, id: string): FrameRefusal {
  const m = members.get(id);
  const nodes = m === undefined ? [] : m.facts.nodes.map((node) => nodeIds[node] ?? "");
  const axis = m?.drivenBy[0] ?? 0;
  const way = m === undefined ? [0, 0, 0] : [m.facts.axes.x, m.facts.axes.y, m.facts.axes.z][axis];
  return {
    refused: `No equilibrium, a mechanism: the releases of beam ${id} leave it free to move under its load`,
    moves: { nodes, direction: [...(way ?? [0, 0, 0]), 0, 0, 0] },
  };
}
