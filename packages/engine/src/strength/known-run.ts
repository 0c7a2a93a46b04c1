import type { Scheme } from "@cornerway/schema";
import { engineVersion } from "../engine-version.ts";
import { inOrder } from "../geometry/in-order.ts";
import type { Strength } from "./strength-from.ts";

/**
 * What the full run of a scheme said, without its workings, as text that any thread can be given and any page can keep: what is
 * asked of the same drawing next need not run it again. It holds for that drawing with its hazards, and for this engine, alone.
 */
export type KnownRun = { readonly of: string; readonly said: string };

export function knownRun(scheme: Scheme, strength: Strength): KnownRun {
  return { of: nameOf(scheme), said: JSON.stringify(withoutWorkings(strength)) };
}

/** What it said of this scheme; undefined where it is of another scheme or another engine. */
export function saidOf(scheme: Scheme, known: KnownRun | undefined): Strength | undefined {
  if (known?.of !== nameOf(scheme)) return undefined;
  // oxlint-disable-next-line typescript/consistent-type-assertions -- this engine wrote it: its version stands in the name
  return JSON.parse(known.said) as Strength;
}

/** One name for one drawing, whatever the order of its elements and fields. */
export const nameOf = (scheme: Scheme): string => `${engineVersion} ${JSON.stringify(inOrder(scheme), fieldsInOrder)}`;

const fieldsInOrder = (_: string, value: unknown): unknown =>
  typeof value === "object" && value !== null && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)))
    : value;

const withoutWorkings = (strength: Strength): Strength =>
  strength.accepted
    ? { ...strength, results: strength.results.map(({ working: _working, ...result }) => result) }
    : strength;
