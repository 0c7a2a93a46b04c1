import type { Mark, MarkFact } from "@cornerway/schema";

/**
 * The figure of a mark by which it weighs more at the same verdict: a utilisation, a force in kN, a moment in kN m or a
 * length in mm, always the same one for a kind; null for a mark that only is or is not. Infinite where no strength is stated.
 */
export const measureOf = ({ fact }: Mark): number | null => measured(fact);

function measured(fact: MarkFact): number | null {
  switch (fact.kind) {
    case "overstressed":
    case "strength-open":
      return greatest(fact.parts.map(({ utilisation }) => utilisation ?? Infinity));
    case "strength-adequate":
      return fact.governing.utilisation;
    case "borne-on-rail":
      return greatest(fact.crossings.map(({ forceKn }) => forceKn));
    case "borne-on-fittings":
      return fact.heaviestPostKn;
    case "load-over-opening":
    case "post-carries":
    case "borne-on-beam":
    case "uplift":
    case "slides":
      return fact.forceKn;
    case "beam-carries":
    case "post-off-centre":
      return fact.momentKnm;
    case "beam-lifts":
      return fact.upliftKn;
    case "overhang":
      return fact.lengthMm;
    case "tips-over":
      return fact.outsideMm;
    case "near-tipping":
      return -fact.insideMm;
    case "collision":
    case "below-ground":
      return fact.depthMm;
    case "opening-in-sheet":
    case "wall-out":
      return fact.widthMm;
    case "corner-on-air":
      return fact.dropMm;
    case "rocks":
    case "stands-clear":
      return fact.gapMm;
    default:
      return null;
  }
}

const greatest = (figures: readonly number[]): number | null => (figures.length === 0 ? null : Math.max(...figures));
