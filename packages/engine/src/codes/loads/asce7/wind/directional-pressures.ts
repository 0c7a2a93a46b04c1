import type { WindHazard } from "../../../../loads/site-hazards.ts";
import type { DirectionalPressures, PressureBand, RoofBand } from "../../../../loads/wind-pressures.ts";
import type { WindDirection, WindShape } from "../../../../loads/wind-shape.ts";
import { openWorking } from "../../../../working/open-working.ts";
import type { Working } from "../../../../working/working.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";
import { flatRoofCoefficients } from "./roof-coefficients.ts";
import { velocityPressure } from "./velocity-pressure.ts";
import { leewardWall, sideWall, windwardWall } from "./wall-coefficients.ts";

/** External pressures of the directional procedure (27.3.1) on the enclosing box with a flat roof. */
export function directionalPressures(
  edition: Asce7Edition,
  wind: WindHazard,
  shape: WindShape,
  direction: WindDirection,
): DirectionalPressures {
  const alongX = direction === "+x" || direction === "-x";
  const [along, across] = alongX ? [shape.lengthXMm, shape.lengthYMm] : [shape.lengthYMm, shape.lengthXMm];
  const atRoof = velocityPressure(edition, wind, shape.heightMm);
  const pressure: Surface = (title, q, coefficient) =>
    surfacePressure(edition, `${title}, wind ${direction}`, q, coefficient);
  const leeward = pressure("Leeward wall", atRoof, leewardWall(along / across));
  const side = pressure("Side wall", atRoof, sideWall);
  const soffit = pressure("Underside of an overhang", atRoof, windwardWall);
  const windward = windwardBands(shape.heightMm).map(({ fromMm, toMm }) =>
    banded(fromMm, toMm, pressure("Windward wall", velocityPressure(edition, wind, toMm), windwardWall)),
  );
  const roof = roofBands(shape.heightMm, along, across).map((band) => roofBand(band, atRoof, pressure));
  return {
    direction,
    windward: windward.map(({ band }) => band),
    leewardPa: leeward.result.value,
    sidePa: side.result.value,
    soffitPa: soffit.result.value,
    roof: roof.map(({ band }) => band),
    workings: [...windward, ...roof].flatMap(({ workings }) => workings).concat(leeward, side, soffit),
  };
}

type Surface = (title: string, q: Working, coefficient: number) => Working;

/** Gust factor of rigid buildings, 26.11.1. */
const gustFactor = 0.85;

function surfacePressure(edition: Asce7Edition, title: string, q: Working, coefficient: number): Working {
  const w = openWorking(title, asce7(edition, "27.3.1"));
  w.take("q", q);
  w.let("G", gustFactor, "1", "gust factor, rigid building", "memory", "26.11.1");
  w.let("C_p", coefficient, "1", "external pressure coefficient", "memory", "Fig. 27.3-1");
  w.compute("p", "q * G * C_p", "Pa", "27.3-1, external part");
  return w.giving("p");
}

const banded = (fromMm: number, toMm: number, working: Working) => ({
  band: { fromMm, toMm, pressurePa: working.result.value } satisfies PressureBand,
  workings: [working],
});

function roofBand({ fromMm, toMm, most, least }: RoofPlace, atRoof: Working, pressure: Surface) {
  const [strongest, weakest] = [pressure("Roof", atRoof, most), pressure("Roof", atRoof, least)];
  const band: RoofBand = { fromMm, toMm, mostPa: strongest.result.value, leastPa: weakest.result.value };
  return { band, workings: [strongest, weakest] };
}

/** Heights of Table 26.10-1, ft; each band takes the pressure at its upper edge. */
const tableHeightsFt = [15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 100, 120, 140, 160, 180, 200, 250, 300];

function windwardBands(heightMm: number): { fromMm: number; toMm: number }[] {
  const edges = tableHeightsFt.map((ft) => ft * 304.8).filter((edge) => edge < heightMm);
  return [...edges, heightMm].map((toMm, at) => ({ fromMm: edges[at - 1] ?? 0, toMm }));
}

type RoofPlace = {
  readonly fromMm: number;
  readonly toMm: number;
  readonly most: number;
  readonly least: number;
};

function roofBands(heightMm: number, alongMm: number, acrossMm: number): RoofPlace[] {
  const firstBandM2 = ((Math.min(heightMm / 2, alongMm) / 1000) * acrossMm) / 1000;
  return flatRoofCoefficients(heightMm / alongMm, firstBandM2)
    .map(({ from, to, most, least }) => ({
      fromMm: from * heightMm,
      toMm: Math.min(to * heightMm, alongMm),
      most,
      least,
    }))
    .filter(({ fromMm, toMm }) => toMm > fromMm);
}
