import { openWorking } from "../working/open-working.ts";
import type { Resistance } from "../working/resistance.ts";
import type { Clause, Working } from "../working/working.ts";
import { checkOf, demandAgainst, type Check } from "./check.ts";
import type { CheckedElement } from "./limit-state.ts";

const statics: Clause = { document: "Statics", edition: "", place: "simple span", certainty: "derived" };

/** Pressure at strength level, Pa, on a simple span, mm, with what it is and where it comes from. */
export type SpanPressure = {
  readonly pressurePa: number;
  readonly spanMm: number;
  readonly meaning: string;
  readonly from: readonly Working[];
};

/**
 * Folded sheet between its rails under a pressure; `gathers` mm of load on each mm of the strip that carries it: 1 for sheet
 * by itself, more for the strip beside an opening. The welds to the rails would fix it in part: a simple span is safe.
 */
export function sheetUnderPressure(
  element: Extract<CheckedElement, "side sheet" | "end sheet" | "roof sheet">,
  { pressurePa, spanMm, meaning, from }: SpanPressure,
  gathers: number,
  strength: Resistance,
): Check {
  const working = openWorking("Sheet bent between its rails", statics);
  letPressure(working, pressurePa, meaning, from);
  working.let("L", spanMm, "mm", "span between the rails", "derived");
  working.let("g", gathers, "1", "load gathered by the strip, over its own", "common practice");
  working.compute("M", "g*p/10^6*L^2/8", "N·mm/mm");
  return demandAgainst({ element, limitState: "sheet bending out of plane" }, working.giving("M"), strength);
}

/** A bar of an opening bent out of the wall, with the share its greatest other use takes: their sum never passes less than an interaction. */
export function barUnderPressure(
  element: Extract<CheckedElement, "jamb" | "added beam">,
  { pressurePa, spanMm, meaning, from }: SpanPressure,
  carriesMm: number,
  inPlane: number,
  strength: Resistance,
): Check {
  const subject = { element, limitState: "wind on a part" } as const;
  if (!strength.ok) return { ok: false, ...subject, why: strength.why };
  const working = openWorking("Bar of an opening bent out of the wall", statics);
  letPressure(working, pressurePa, meaning, from);
  working.let("b", carriesMm, "mm", "width it carries", "derived");
  working.let("L", spanMm, "mm", "span", "derived");
  working.take("M_a", strength.working);
  working.let("u", inPlane, "1", "greatest use by the forces of the model", "derived", "analysis");
  working.compute("M", "p/10^6*b*L^2/8", "N·mm");
  working.compute("use", "M/M_a + u", "1", "sum of both, on the safe side of an interaction");
  working.let("limit", 1, "1", "limit", "derived");
  return checkOf(subject, working.against("use", "limit"));
}

type Open = ReturnType<typeof openWorking>;

/** The working of a pressure goes with it where it comes from one. */
function letPressure(working: Open, pressurePa: number, meaning: string, from: readonly Working[]): void {
  const own = from.find(({ result }) => Math.abs(result.value - pressurePa) < PASCAL);
  if (own === undefined) working.let("p", pressurePa, "Pa", meaning, "derived", "loads of the place");
  else working.take("p", own, meaning);
}

const PASCAL = 1e-6;
