import type { ActionGap } from "../../../loads/action-gap.ts";
import type { SiteHazards } from "../../../loads/site-hazards.ts";
import type { Asce7Edition } from "./asce7-edition.ts";

/**
 * What this engine leaves out of ASCE 7. Tornado loads came with 7-22, for risk categories III and IV (ch. 32); the
 * site study is asked for by 7-16 11.4.8 on class D with S_1 of 0.2 or more unless its exception is taken. From memory.
 */
export function actionGaps(edition: Asce7Edition, { riskCategory, seismic }: SiteHazards): ActionGap[] {
  const severe = riskCategory === "III" || riskCategory === "IV";
  const soft = seismic.siteClass === "D" || seismic.siteClass === "default";
  return [
    ...(edition === "2022" && severe ? (["tornado"] as const) : []),
    ...(edition === "2016" && soft && seismic.s1 >= 0.2 && seismic.siteValues === undefined
      ? (["site response study"] as const)
      : []),
    ...always,
  ];
}

const always: readonly ActionGap[] = [
  "flood",
  "rain and ponding",
  "ice",
  "wind on plant, parapets and guards on roofs",
  "partial and sliding snow",
  "snow drift across a gap between buildings",
  "modal response analysis",
];
