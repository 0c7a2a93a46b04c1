import { applyOperations, collectionNames, type CollectionName, type Operation, type Scheme } from "@cornerway/schema";
import { wholeGroup } from "./chosen-group.ts";
import { writes } from "./element-operations.ts";
import { layElement } from "./lay-element.ts";
import type { Laying } from "./laying.ts";
import { padsFollow } from "./pads-follow.ts";
import { padsUnder } from "./pads-under.ts";

/**
 * Lays the chosen things elsewhere in one act: shifted, turned or mirrored together. Pads that hold only them go along;
 * corners that come to the ground without one get one.
 */
export function layGroup(scheme: Scheme, ids: readonly string[], laying: Laying): Operation[] {
  const chosen = new Set(ids);
  const pads = laying.riseUm === 0 ? padsUnder(scheme, chosen).alone.map(({ id }) => id) : [];
  const group = new Set([...wholeGroup(scheme, ids), ...pads]);
  const laid = collectionNames.flatMap((name) => layList(scheme, name, group, laying));
  return laid.length === 0 ? [] : [...laid, ...newPads(scheme, chosen, laid)];
}

function layList(scheme: Scheme, name: CollectionName, group: ReadonlySet<string>, laying: Laying): Operation[] {
  if (name === "containers")
    return scheme.containers
      .filter(({ id }) => group.has(id))
      .flatMap((unit) => {
        const { id, xUm, yUm, zUm, turnMdeg } = layElement(scheme, name, unit, laying);
        const moved = xUm !== unit.xUm || yUm !== unit.yUm || zUm !== unit.zUm;
        const turned = turnMdeg !== unit.turnMdeg;
        return [
          ...(moved ? [{ kind: "container.move", id, xUm, yUm, zUm } as const] : []),
          ...(turned ? [{ kind: "container.turn", id, turnMdeg } as const] : []),
        ];
      });
  return changedOf(scheme, name, group, laying);
}

function changedOf<N extends CollectionName>(
  scheme: Scheme,
  name: N,
  group: ReadonlySet<string>,
  laying: Laying,
): Operation[] {
  const { change } = writes[name];
  const elements: readonly Scheme[N][number][] = scheme[name];
  return elements
    .filter(({ id }) => group.has(id))
    .flatMap((element) => {
      const after = layElement(scheme, name, element, laying);
      return JSON.stringify(after) === JSON.stringify(element) ? [] : [change(after)];
    });
}

/** Pads for the corners of the laid units that came to the ground bare. */
function newPads(scheme: Scheme, chosen: ReadonlySet<string>, laid: readonly Operation[]): Operation[] {
  const applied = applyOperations(scheme, laid);
  if (!applied.ok) return [];
  const pads: Operation[] = [];
  let now = applied.scheme;
  for (const unit of applied.scheme.containers.filter(({ id }) => chosen.has(id))) {
    const set = padsFollow(now, null, unit);
    const next = applyOperations(now, set);
    if (!next.ok) continue;
    now = next.scheme;
    pads.push(...set);
  }
  return pads;
}
