import type { Assessment } from "./assessment.ts";
import type { Mark } from "./mark.ts";
import type { Disposition } from "./review.ts";

/** Why a disposition may not be stamped on a revision. */
export type StampRefusal =
  | { readonly why: "strength not judged" }
  | { readonly why: "gravity alone" }
  | { readonly why: "does not work" | "not checked" | "needs the engineer"; readonly marks: number }
  | { readonly why: "found otherwise"; readonly elements: readonly string[] }
  | { readonly why: "requests open"; readonly requests: number }
  | { readonly why: "conditions open"; readonly conditions: number };

/** What of a revision a stamp depends on. */
export interface StampedOn {
  result: Assessment;
  /** Marks the engineer wrote on at this very revision. */
  answered: ReadonlySet<string>;
  openRequests: number;
  /** Conditions of the project that nobody has closed. */
  openConditions: number;
  /** Elements it covers of which survey or site have found something else than is drawn; none unless said. */
  found?: readonly string[];
}

/**
 * Why a disposition is not open, the gravest first; none where it may be pressed. What sends a scheme back may always be
 * said of an answer that is there. What lets work go on needs strength judged under all loads, and nothing that does not
 * work, is not checked, or was found to stand otherwise; without exceptions it also needs every open verdict answered and no request or condition open.
 */
export function stampRefusals(disposition: Disposition, on: StampedOn): StampRefusal[] {
  if (sendsBack(disposition)) return [];
  const { result, answered, openRequests, openConditions, found = [] } = on;
  const refusals = [
    ...marksRefusal("does not work", result.marks),
    ...scopeRefusal(result),
    ...marksRefusal("not checked", result.marks),
    ...(found.length === 0 ? [] : [{ why: "found otherwise", elements: found } as const]),
  ];
  if (disposition === "Make corrections noted") return refusals;
  const unanswered = result.marks.filter(({ id }) => !answered.has(id));
  return [
    ...refusals,
    ...marksRefusal("needs the engineer", unanswered),
    ...(openRequests === 0 ? [] : [{ why: "requests open", requests: openRequests } as const]),
    ...(openConditions === 0 ? [] : [{ why: "conditions open", conditions: openConditions } as const]),
  ];
}

const sendsBack = (disposition: Disposition): boolean =>
  disposition === "Revise and resubmit" || disposition === "Rejected";

function scopeRefusal({ scope }: Assessment): StampRefusal[] {
  if (scope === "load path only, no strength checked") return [{ why: "strength not judged" }];
  return scope === "load path, and strength under gravity loads" ? [{ why: "gravity alone" }] : [];
}

function marksRefusal(
  verdict: "does not work" | "not checked" | "needs the engineer",
  marks: readonly Mark[],
): StampRefusal[] {
  const count = marks.filter((mark) => mark.verdict === verdict).length;
  return count === 0 ? [] : [{ why: verdict, marks: count }];
}
