import type { Clause } from "../../working/working.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Working } from "../../working/working.ts";

/** Equilibrium of a rigid body on its bearings: nothing but statics. */
export const statics: Clause = {
  document: "Statics",
  edition: "",
  place: "equilibrium of a rigid body",
  certainty: "derived",
};

export type Overturning = {
  readonly body: string;
  readonly edge: string;
  /** Down, factored. */
  readonly weightN: number;
  /** Of the weight from the edge it would turn about. */
  readonly leverMm: number;
  /** Of everything that turns it over that edge, factored. */
  readonly momentNmm: number;
};

/** Overturning moment against what the weight resists; no limit, so no utilisation, where nothing resists. */
export function overturning({ body, edge, weightN, leverMm, momentNmm }: Overturning): Working {
  const w = openWorking(`Turning over of ${body} about its ${edge} edge`, statics);
  w.let("W", weightN, "N", "least weight, factored", "derived");
  w.let("a", leverMm, "mm", "lever of the weight about the edge", "derived");
  w.let("M_o", Math.max(momentNmm, 0), "N·mm", "overturning moment, factored", "derived");
  w.compute("M_r", "W * a", "N·mm");
  return w.value("M_r") > 0 ? w.against("M_o", "M_r") : w.giving("M_o");
}

/** What that working gives; infinite where nothing resists. */
export const overturningUse = ({ weightN, leverMm, momentNmm }: Omit<Overturning, "body" | "edge">): number =>
  useOf(momentNmm, weightN * leverMm);

export type Sliding = {
  readonly body: string;
  readonly weightN: number;
  readonly upliftN: number;
  readonly horizontalN: number;
  readonly friction: number;
  /** Friction never counts in an earthquake. */
  readonly seismic: boolean;
};

/**
 * Horizontal force against friction on the bearings. In an earthquake, or with nothing bearing, the whole force needs a
 * connection.
 */
export function sliding({ body, weightN, upliftN, horizontalN, friction, seismic }: Sliding): Working {
  const w = openWorking(`Sliding of ${body}`, statics);
  w.let("W", weightN, "N", "least weight, factored", "derived");
  w.let("U", Math.max(upliftN, 0), "N", "uplift, factored", "derived");
  w.let("H", horizontalN, "N", "horizontal force, factored", "derived");
  w.let(
    "μ",
    seismic ? 0 : friction,
    "1",
    seismic ? "no friction in an earthquake" : "friction, both faces alike",
    "common practice",
  );
  w.compute("F", "μ * max(W - U, 0)", "N");
  w.compute("T", "max(H - F, 0)", "N");
  w.note("T is what a lock, weld or other connection has to hold; 0 where friction does.");
  return w.value("F") > 0 ? w.against("H", "F") : w.giving("T");
}

/** What that working gives; infinite where nothing resists. */
export const slidingUse = ({ weightN, upliftN, horizontalN, friction, seismic }: Omit<Sliding, "body">): number =>
  useOf(horizontalN, (seismic ? 0 : friction) * Math.max(weightN - Math.max(upliftN, 0), 0));

/** Uplift against the weight. */
export function uplift(body: string, weightN: number, upliftN: number): Working {
  const w = openWorking(`Lifting off of ${body}`, statics);
  w.let("U", Math.max(upliftN, 0), "N", "uplift, factored", "derived");
  w.let("W", weightN, "N", "least weight, factored", "derived");
  return w.against("U", "W");
}

/** What that working gives. */
export const upliftUse = (weightN: number, upliftN: number): number => useOf(upliftN, weightN);

const useOf = (acting: number, resisting: number): number =>
  resisting > 0 ? Math.max(acting, 0) / resisting : Infinity;
