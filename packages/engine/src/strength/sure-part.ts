import type { ElementResult } from "./element-result.ts";
import type { StrengthPart } from "./strength-part.ts";

/**
 * A part judged by what is sure of it alone, beside the part itself, which is judged by everything. `by` says what that is.
 * Runs that do not stand as drawn make no part fail.
 */
export const surePart = (by: StrengthPart, what: Sure): StrengthPart => ({
  ...by,
  id: sureId(by.id, what),
  sureOf: by.id,
  said: by.said === undefined ? said[what] : `${by.said} ${said[what]}`,
  use: (solved, above) => (solved.held.length > 0 ? 0 : by.use(solved, above)),
});

const said = {
  "what is checked":
    "Only limit states that are wholly checked: what is bounded alone asks for more, and is told beside.",
  "both bounds":
    "Held along its length by sheet, and in compression no weaker than its proof load: beyond this it is beyond every bound.",
} as const;

type Sure = "what is checked" | "both bounds";

const sureId = (partId: string, what: Sure): string => `${partId}, by ${what}`;

/** What is sure of a part is told where it is beyond its strength. */
export const isTold = (
  { sureOf }: Pick<StrengthPart, "sureOf">,
  asDrawn: { readonly use: number } | undefined,
): boolean => sureOf === undefined || (asDrawn !== undefined && asDrawn.use > 1);

type Told = Pick<ElementResult, "id" | "sureOf" | "covered" | "envelope">;

/** Where what governs a part is checked, it is what is sure of it as well: told once, under each assumption as far as it is sure. */
export function toldOnce<T extends Told>(results: readonly T[]): T[] {
  const sureBy = new Map(results.flatMap((one) => (one.sureOf === undefined ? [] : [[one.sureOf, one] as const])));
  const once = new Set(results.flatMap(({ id, covered }) => (covered === "checked" && sureBy.has(id) ? [id] : [])));
  return results.flatMap((one): T[] => {
    if (one.sureOf !== undefined) return once.has(one.sureOf) ? [] : [one];
    const sure = sureBy.get(one.id);
    return sure !== undefined && once.has(one.id) ? [{ ...one, envelope: sure.envelope }] : [one];
  });
}

/** A result, and where what governs it is checked, the same as what is sure of its part: so it is told beside a bound that is exceeded further. */
export const alsoAsSure = <T extends Told>(result: T): T[] =>
  result.sureOf === undefined && result.covered === "checked"
    ? [result, { ...result, id: sureId(result.id, "what is checked"), sureOf: result.id }]
    : [result];
