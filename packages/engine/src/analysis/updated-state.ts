import type { Element } from "../elements/element.ts";
import { eliminateDense } from "../numerics/dense-ldlt.ts";
import type { BorderUnknown } from "./border-unknowns.ts";
import { lostHold } from "./lost-hold.ts";
import type { Preparation } from "./prepare.ts";
import type { Prepared } from "./prepared.ts";
import type { Responses } from "./responses.ts";
import { responsesOf } from "./responses-of.ts";
import { stateDifference } from "./state-difference.ts";
import { actingElements, heldFreedoms, type ContactState } from "./system.ts";

/**
 * The system in another state of its bearings, through the factorisation of the state at hand: few springs and held freedoms
 * are different, and each is one further unknown. Where one movement alone is resisted no longer, that movement. Null where
 * neither is to be trusted, not possible (a joint whose idle direction is touched) or not worth it: then the state must be
 * factorised. `responses` are those of the factorised state.
 */
export function updatedState(
  base: Prepared,
  state: ContactState,
  responses: Responses = responsesOf(base.update?.from ?? base),
): Preparation | null {
  const from = base.update?.from ?? base;
  const { system, factor, idle, further } = from;
  const held = heldFreedoms(system, state);
  const unknowns = unknownsBetween(from, state, held);
  if (unknowns.length * unknowns.length > MOST_WORK * factor.tree.equations) return null;
  if (unknowns.some((unknown) => freedomsOf(unknown).some((freedom) => isOrTouchesIdle(from, freedom)))) return null;
  const { corner, scale } = further.corner(unknowns);
  const elements = elementsIn(from, state);
  if (!eliminateDense(corner, unknowns.length, unknowns.length, scale)) {
    const movement = lostHold(from, unknowns, { elements, held }, responses);
    return movement && { stable: false, movements: [movement] };
  }
  const equationOf = from.equationOf.slice();
  unknowns.forEach((unknown, n) => {
    if (unknown.kind === "freed") equationOf[unknown.freedom] = factor.tree.equations + n;
    if (unknown.kind === "held") equationOf[unknown.freedom] = -1;
  });
  const border = { columns: further.reduced(unknowns), inverse: further.inverse, corner };
  const update = { from, unknowns, border };
  return { stable: true, prepared: { system, state, elements, held, equationOf, factor, update, idle, further } };
}

/** What acts in the state, and what stiffens the factorised one besides. */
function elementsIn(from: Prepared, state: ContactState): Element[] {
  const known = stiffeners.get(from) ?? from.elements.slice(actingElements(from.system, from.state).length);
  stiffeners.set(from, known);
  return [...actingElements(from.system, state), ...known];
}

const stiffeners = new WeakMap<Prepared, readonly Element[]>();

/** Beyond this many products of columns per equation a factorisation costs less (measured). */
const MOST_WORK = 8;

/**
 * What is stiffer or held now comes first, what is softer or free now last: the first part of what block elimination leaves
 * is negative definite, the second positive semidefinite, which needs no exchange of rows.
 */
function unknownsBetween(from: Prepared, state: ContactState, heldNow: Uint8Array): BorderUnknown[] {
  const { springs, freed, held } = stateDifference(from.system, [from.state, from.held], [state, heldNow]);
  const asUnknowns = (sign: number): BorderUnknown[] =>
    springs.filter(({ stiffness }) => stiffness * sign > 0).map((spring) => ({ kind: "spring", ...spring }));
  return [
    ...held.map((freedom) => ({ kind: "held", freedom }) as const),
    ...inOrder(asUnknowns(1)),
    ...inOrder(asUnknowns(-1)),
    ...freed.map((freedom) => ({ kind: "freed", freedom }) as const),
  ];
}

/** One order however the springs were come upon, so that a state has the same bits whatever was solved before. */
function inOrder(unknowns: readonly BorderUnknown[]): BorderUnknown[] {
  return unknowns.toSorted((a, b) => {
    const [[a0 = 0, a1 = 0], [b0 = 0, b1 = 0]] = [freedomsOf(a), freedomsOf(b)];
    return a0 - b0 || a1 - b1;
  });
}

function freedomsOf(unknown: BorderUnknown): number[] {
  return unknown.kind === "spring" ? [unknown.lower, unknown.upper] : [unknown.freedom];
}

/** Whether nothing resists the freedom, or some direction that goes along it, which another state may resist. */
function isOrTouchesIdle({ idle, equationOf, held }: Prepared, freedom: number): boolean {
  if ((equationOf[freedom] ?? -1) < 0 && !held[freedom]) return true;
  return idle.some(({ node, direction }) => node === Math.floor(freedom / 6) && direction[freedom % 6] !== 0);
}
