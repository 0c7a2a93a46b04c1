import type { Verdict } from "../verdict.ts";
import { verdictHeadings } from "./verdict-heading.ts";

/** Why a place and width on an opening chart is answered as it is, as the engine says it; lengths mm, `use` of the strength. */
export type ChartWhy =
  | { readonly kind: "member cut"; readonly member: string }
  | { readonly kind: "meets opening"; readonly openingId: string }
  | { readonly kind: "part"; readonly because: ChartBecause; readonly partId: string; readonly use: number }
  | {
      readonly kind: "hold not drawn";
      readonly hold: { readonly kind: "uplift" | "sliding"; readonly ownerId: string; readonly forceN: number };
    }
  | { readonly kind: "no equilibrium"; readonly run: string }
  | { readonly kind: "left out of the model"; readonly what: string }
  | { readonly kind: "within"; readonly partId: string; readonly use: number };

export type ChartBecause =
  "over" | "beyond its bound" | "assumption decides" | "refused" | "not covered" | "over once held" | "at a look";

/** One sentence. `tagOf` names an element by its id; the name of a part begins with the id of its owner. */
export function chartSentence(why: ChartWhy, tagOf: (id: string) => string): string {
  switch (why.kind) {
    case "member cut":
      return `It would cut the ${why.member}.`;
    case "meets opening":
      return `It meets ${tagOf(why.openingId)}.`;
    case "part":
      return `${partName(why.partId, tagOf)}: ${becauses[why.because](why.use)}.`;
    case "hold not drawn":
      return `Nothing drawn holds ${tagOf(why.hold.ownerId)} against ${Math.round(why.hold.forceN / 1000)} kN ${why.hold.kind === "uplift" ? "upwards" : "sideways"}.`;
    case "no equilibrium":
      return `Nothing stands under ${why.run}.`;
    case "left out of the model":
      return `The model leaves this out: ${why.what}.`;
    case "within":
      return `Nearest to its strength: ${partName(why.partId, tagOf)}, ${why.use.toFixed(2)} of it.`;
  }
}

/** Ids inside the name of a part as their tags: its owner first, then what stands on it. */
function partName(partId: string, tagOf: (id: string) => string): string {
  const words = partId.split(" ").map((word) => {
    const comma = word.endsWith(",") ? "," : "";
    return `${tagOf(comma === "" ? word : word.slice(0, -1))}${comma}`;
  });
  return words.join(" ");
}

const becauses: Readonly<Record<ChartBecause, (use: number) => string>> = {
  over: (use) => `${use.toFixed(2)} of its strength under every assumption`,
  "beyond its bound": (use) => `${use.toFixed(2)} of its safe bound`,
  "assumption decides": (use) => `up to ${use.toFixed(2)} of its strength, an assumption decides`,
  "at a look": (use) =>
    Number.isFinite(use)
      ? `${use.toFixed(2)} of its strength under the loads that govern`
      : "no strength can be stated under the loads that govern",
  refused: () => "no strength can be stated",
  "not covered": () => "not covered by any check",
  "over once held": (use) =>
    Number.isFinite(use)
      ? `${use.toFixed(2)} of its strength once something holds what lifts`
      : "no strength can be stated once something holds what lifts",
};

/** What a chart says of a verdict: under gravity alone nothing is settled, and what works is not checked. */
export const chartVerdict = (verdict: Verdict, under: "gravity loads only" | "all loads"): Verdict =>
  under === "gravity loads only" && (verdict === "works as built" || verdict === "works with steel")
    ? "not checked"
    : verdict;

/** The verdict of a region of a chart in words, with what it was solved under. */
export const chartVerdictWords = (verdict: Verdict, under: "gravity loads only" | "all loads"): string =>
  chartVerdict(verdict, under) === verdict
    ? verdictHeadings[verdict]
    : `${verdictHeadings[verdict]} under gravity alone; wind and earthquake not checked`;

/** The price step of a place: a step, the least it can be, or none where nothing is checked. */
export const chartPriceWords = (priced: { readonly step: string; readonly atLeast: boolean } | undefined): string =>
  priced === undefined ? "no price: not checked" : `${priced.atLeast ? "at least " : ""}${priced.step}`;
