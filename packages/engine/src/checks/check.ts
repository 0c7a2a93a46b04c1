import { openWorking } from "../working/open-working.ts";
import type { Refusal, Resistance } from "../working/resistance.ts";
import type { Unit } from "../working/unit.ts";
import type { Working } from "../working/working.ts";
import type { CheckedElement, LimitState } from "./limit-state.ts";

/** One limit state of one element: its utilisation and working, or why nobody but the engineer can say. */
export type Check =
  | {
      readonly ok: true;
      readonly element: CheckedElement;
      readonly limitState: LimitState;
      readonly utilisation: number;
      readonly working: Working;
    }
  | {
      readonly ok: false;
      readonly element: CheckedElement;
      readonly limitState: LimitState;
      readonly why: Refusal;
    };

export type Subject = { readonly element: CheckedElement; readonly limitState: LimitState };

/**
 * A force or moment, a number or the working it comes from, against a strength. Its sign does not matter; a refused
 * strength refuses the check.
 */
export function demandAgainst(subject: Subject, demand: number | Working, strength: Resistance): Check {
  if (!strength.ok) return { ok: false, ...subject, why: strength.why };
  const { working: part } = strength;
  const working = openWorking(`${part.title}: demand`, part.clause);
  if (typeof demand === "number")
    working.let("demand", Math.abs(demand), part.result.unit, "required strength", "derived", "analysis");
  else working.take("demand", demand);
  working.take("strength", part);
  return checkOf(subject, working.against("demand", "strength"));
}

/** A finished comparison as a check. Throws where the working compares nothing. */
export function checkOf(subject: Subject, working: Working): Check {
  if (working.utilisation === undefined) throw new RangeError(`checkOf: "${working.title}" compares nothing`);
  return { ok: true, ...subject, utilisation: working.utilisation, working };
}

/** A value against a limit that is not a strength, such as a deflection. */
export function valueAgainst(
  subject: Subject,
  clause: Working["clause"],
  value: { readonly value: number; readonly meaning: string },
  limit: { readonly value: number; readonly meaning: string; readonly certainty: Working["certainty"] },
  unit: Unit,
): Check {
  const working = openWorking(`${subject.limitState}, ${subject.element}`, clause);
  working.let("value", Math.abs(value.value), unit, value.meaning, "derived", "analysis");
  working.let("limit", limit.value, unit, limit.meaning, limit.certainty);
  return checkOf(subject, working.against("value", "limit"));
}

/** The worst of several: a refused one first, then the greatest utilisation. Undefined for none. */
export function governing(checks: readonly Check[]): Check | undefined {
  return checks.reduce<Check | undefined>((worst, next) => {
    if (worst === undefined) return next;
    if (!worst.ok) return worst;
    return !next.ok || next.utilisation > worst.utilisation ? next : worst;
  }, undefined);
}
