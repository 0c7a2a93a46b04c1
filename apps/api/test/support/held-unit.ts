import { defaultBasis, emptyScheme, fittingNames, type FittingName, type Scheme } from "@cornerway/schema";
import { unit } from "./sample.ts";

const edition = "IBC 2021";

/** Half of the hole spacings of a 20 ft unit, ISO 668. */
const [halfLengthUm, halfWidthUm] = [2_926_500, 1_129_500];

/** A place with some wind and snow and little earthquake. */
const hazards: NonNullable<Scheme["basis"]["hazards"]> = {
  riskCategory: "II",
  wind: { edition, speedMs: 42, exposure: "B", elevationM: 0, topographicFactor: 1 },
  snow: { edition, groundPa: 960, roofExposure: "partially exposed", thermal: "heated" },
  seismic: { edition, ss: 0.15, s1: 0.06, siteClass: "D", longPeriodS: 8 },
};

/** In the order of their ids. */
const corners = fittingNames.toSorted();

/** One 20 ft unit on four pads of 1.2 m, held down to each, in a place: its strength is judged under all loads, and it works. */
export function heldUnit(): Scheme {
  const container = { ...unit(1), xUm: 0 };
  return {
    ...emptyScheme,
    containers: [container],
    pads: corners.map((fitting, n) => ({
      ...{ id: `pad-${fitting}`, tag: `Q${n + 1}`, ...under(fitting), topZUm: 0, turnMdeg: 0 },
      ...{ lengthUm: 1_200_000, widthUm: 1_200_000, depthUm: 400_000 },
    })),
    locks: corners.map((fitting, n) => ({
      ...{ id: `lock-${fitting}`, tag: `L${n + 1}`, containerId: container.id, fitting, kind: "hold-down" as const },
    })),
    loads: [
      { id: "finish", containerId: container.id, surface: "floor", case: "finish", pressurePa: 500 },
      { id: "imposed", containerId: container.id, surface: "floor", case: "imposed", pressurePa: 1000 },
    ],
    basis: { ...defaultBasis, hazards, soil: { class: "sand" }, settlementUm: 3000 },
  };
}

const under = (fitting: FittingName) => ({
  xUm: fitting.startsWith("door") ? halfLengthUm : -halfLengthUm,
  yUm: fitting.endsWith("left") ? halfWidthUm : -halfWidthUm,
});
