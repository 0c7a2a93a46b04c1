import type { LoadDerivation } from "@cornerway/schema";
import type { SiteActions, SiteLoading } from "../loads/site-actions.ts";
import type { Working } from "../working/working.ts";

export type LoadGroup = LoadDerivation["group"];

/** A load as it was worked out, under the name its working is kept by. */
export type NamedLoad = { readonly id: string; readonly group: LoadGroup; readonly working: Working };

type Accepted = Extract<SiteActions, { accepted: true }>;

/** Every load of the place with its working: dead and imposed of each unit, roofs, snow, wind, earthquake. */
export function loadDerivations({ workings, roofLive, site }: Accepted): NamedLoad[] {
  return [
    ...named("dead", workings.dead),
    ...named("imposed", workings.imposed),
    ...named("roof", roofLive.workings),
    ...(site === undefined ? [] : siteDerivations(site)),
  ];
}

const siteDerivations = ({ snow, wind, seismic }: SiteLoading): NamedLoad[] => [
  ...named("snow", snow.workings),
  ...named("wind", [
    ...wind.pressures.enclosure.workings,
    wind.pressures.internal,
    ...wind.pressures.directions.flatMap(({ workings }) => workings),
  ]),
  ...named("earthquake", [
    ...seismic.design.workings,
    ...seismic.weights,
    ...(["x", "y"] as const).flatMap((axis) => {
      const { forces } = seismic.axes[axis];
      if (forces === undefined) return [];
      return [forces.coefficient, forces.baseShear, ...forces.storeys.flatMap(({ workings }) => workings)];
    }),
  ]),
];

const named = (group: LoadGroup, workings: readonly Working[]): NamedLoad[] =>
  workings.map((working, at) => ({ id: `${group} ${at + 1}`, group, working }));
