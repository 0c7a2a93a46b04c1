import type { AnalyticalModel } from "../model/analytical-model.ts";
import { planHolds, type HoldPlan } from "../model/plan-holds.ts";
import { flagsKey } from "../numerics/flags-key.ts";
import type { FrameSystem } from "./frame-system.ts";
import { springsBetween, type PlannedHolds, type Spring } from "./system.ts";

/** The plan's holds as springs and held freedoms, for any set of lifted bearings. */
export function plannedHolds(
  plan: HoldPlan,
  { links }: AnalyticalModel,
  frame: FrameSystem,
): (lifted: Uint8Array) => PlannedHolds {
  const { supportBearings, linkBearings, nodeOf } = frame;
  const linkOf = new Map(links.map((link) => [link.id, link]));
  const made = new Map<string, PlannedHolds>();
  const asked = new WeakMap<Uint8Array, PlannedHolds>(); // one state is asked about bearing by bearing
  return (lifted) => {
    const before = asked.get(lifted);
    if (before !== undefined) return before;
    const key = flagsKey(lifted);
    const known = made.get(key) ?? build(liftedNames(lifted, supportBearings, linkBearings));
    made.set(key, known);
    asked.set(lifted, known);
    return known;
  };

  function build(lifted: ReadonlySet<string>): PlannedHolds {
    const springs: Spring[] = [];
    const freedoms: number[] = [];
    const by = new Set<number>();
    for (const [name, { x, y }] of planHolds(plan, lifted).holds) {
      const link = linkOf.get(name);
      const bearing = link === undefined ? supportBearings.get(name) : linkBearings.get(name);
      if (bearing !== undefined) by.add(bearing);
      const node = nodeOf.get(link?.j ?? name);
      if (node === undefined) throw new Error(`no bearing "${name}" to hold by`);
      const k = plan.stiffness;
      if (link !== undefined)
        springs.push(...springsBetween(nodeOf.get(link.i) ?? node, node, [x ? k : 0, y ? k : 0, 0, 0, 0, 0]));
      else freedoms.push(...(x ? [node * 6] : []), ...(y ? [node * 6 + 1] : []));
    }
    return { springs, freedoms, by };
  }
}

/** Ids of the links and nodes of the supports that have lifted. */
export function liftedNames(
  lifted: Uint8Array,
  supportBearings: ReadonlyMap<string, number>,
  linkBearings: ReadonlyMap<string, number>,
): Set<string> {
  const names = [...supportBearings, ...linkBearings].filter(([, b]) => lifted[b] === 1).map(([name]) => name);
  return new Set(names);
}
