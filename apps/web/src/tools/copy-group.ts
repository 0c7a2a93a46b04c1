import {
  applyOperations,
  collectionNames,
  type CollectionName,
  type ElementOf,
  type Operation,
  type Pad,
  type Scheme,
} from "@cornerway/schema";
import { wholeGroup } from "./chosen-group.ts";
import { copyElement } from "./copy-element.ts";
import { writes } from "./element-operations.ts";
import { layElement } from "./lay-element.ts";
import type { Laying } from "./laying.ts";
import { newElementId } from "./new-element-id.ts";
import { tagMaker, unitCapital } from "./next-tag.ts";
import { carries, padsFollow } from "./pads-follow.ts";
import { padsUnder } from "./pads-under.ts";

/**
 * Copies of the chosen things with their cuts, loads and the joints among them, one for each laying, in one act. Ids and
 * labels are fresh; where a corner already has a pad to stand on, none is copied.
 */
export const copyGroup = (scheme: Scheme, ids: readonly string[], layings: readonly Laying[]): Operation[] =>
  copyInto(scheme, scheme, ids, layings);

/** The same of things of one scheme into another; `onto` names the unit there for each that is not among what is copied. */
export function copyInto(
  from: Scheme,
  into: Scheme,
  ids: readonly string[],
  layings: readonly Laying[],
  onto: ReadonlyMap<string, string> = new Map(),
): Operation[] {
  const drawn: Operation[] = [];
  let now = into;
  for (const laying of layings) {
    const copied = copyOnce(from, now, ids, laying, onto);
    now = after(now, copied);
    drawn.push(...copied);
    for (const operation of copied) {
      if (operation.kind !== "container.place") continue;
      const pads = padsFollow(now, null, operation.container);
      now = after(now, pads);
      drawn.push(...pads);
    }
  }
  return drawn;
}

/** One copy of the group of `from`, for the scheme as it is `now`. */
function copyOnce(
  from: Scheme,
  now: Scheme,
  ids: readonly string[],
  laying: Laying,
  onto: ReadonlyMap<string, string>,
): Operation[] {
  const pads = padsUnder(from, new Set(ids)).all.filter((pad) => isBare(now, layElement(from, "pads", pad, laying)));
  const chosenPads = laying.riseUm === 0 ? pads.map(({ id }) => id) : [];
  const group = new Set([...wholeGroup(from, ids), ...chosenPads]);
  const newIds = new Map<string, string>();
  const nextTag = tagMaker(now);
  const copyList = <N extends CollectionName>(name: N): Operation[] => {
    const { add, letter } = writes[name];
    const elements: readonly ElementOf<N>[] = from[name];
    return elements
      .filter(({ id }) => group.has(id))
      .map((element) => {
        const id = newElementId(letter);
        newIds.set(element.id, id);
        const laid = layElement(from, name, element, laying);
        const label = (capitals: string) => nextTag(storeyCapitals(now, { ...laid, id }, laying) ?? capitals);
        return add(copyElement(name, laid, { id, label, rename: (old) => newIds.get(old) ?? onto.get(old) ?? old }));
      });
  };
  // In the order of the lists, so that what is hung on is copied before what hangs on it.
  return collectionNames.flatMap((name) => copyList(name));
}

/** Capitals of a unit copied to another storey; undefined for what keeps its own. */
const storeyCapitals = (now: Scheme, laid: ElementOf<CollectionName>, { riseUm }: Laying): string | undefined =>
  riseUm !== 0 && "type" in laid ? unitCapital(now, laid) : undefined;

/** True where no pad lies yet. */
const isBare = (scheme: Scheme, { xUm, yUm, topZUm }: Pad): boolean =>
  !scheme.pads.some((other) => carries(other, { xMm: xUm / 1000, yMm: yUm / 1000, zMm: topZUm / 1000 }));

function after(scheme: Scheme, operations: readonly Operation[]): Scheme {
  const applied = applyOperations(scheme, operations);
  if (!applied.ok) throw new Error(`a copy was refused: ${JSON.stringify(applied.refusal)}`);
  return applied.scheme;
}
