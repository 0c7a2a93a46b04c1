import { siteCoefficient } from "../../../src/codes/loads/asce7/seismic/site-coefficients.ts";
import { velocityPressure } from "../../../src/codes/loads/asce7/wind/velocity-pressure.ts";
import { designBasisFor } from "../../../src/codes/loads/design-basis-for.ts";
import { sampleHazards } from "../sample-hazards.ts";

const paPerPsf = 47.88025898;
const newtonPerPound = 4.4482216152605;
const ft = 304.8;
const ft2 = 0.09290304;
const inPsf = (pressurePa: number) => pressurePa / paPerPsf;

const basis = designBasisFor("IBC 2021");
const { gravity, seismic, soil } = basis;
const coefficient = (...of: Parameters<typeof siteCoefficient>) => siteCoefficient(...of) ?? Number.NaN;

type Exposure = "B" | "C" | "D";
type StandardYear = "2016" | "2022";

const velocityPsf = (exposure: Exposure, heightFt: number) =>
  inPsf(velocityPressure("2016", sampleHazards({ wind: { exposure } }).wind, heightFt * ft).result.value);

/** K_z from the pressure: q / (0.613·0.85·V²). */
const exposureFactor = (year: StandardYear, exposure: Exposure, heightFt: number) =>
  velocityPressure(year, sampleHazards({ wind: { exposure } }).wind, heightFt * ft).result.value /
  (0.613 * 0.85 * (115 * 0.44704) ** 2);

function elevationFactor(elevationFt: number): number {
  const at = (elevationM: number) =>
    velocityPressure("2016", sampleHazards({ wind: { elevationM } }).wind, 3000).result.value;
  return at(elevationFt * 0.3048) / at(0);
}

const tight = {
  sides: (["+x", "-x", "+y", "-y"] as const).map((side) => ({ side, grossM2: 30, openM2: 0, doorsM2: 0 })),
  roof: { grossM2: 30, openM2: 0 },
};
const boxShape = { lengthXMm: 40 * ft, lengthYMm: 8 * ft, heightMm: 9.5 * ft };
const boxWind = basis.wind.mainSystem(sampleHazards(), boxShape, tight);
const broadside = () => boxWind.directions.find(({ direction }) => direction === "+y");
const endwise = () => boxWind.directions.find(({ direction }) => direction === "+x");

const snowy = sampleHazards({ wind: { exposure: "B" }, snow: { psf: 30 } });
const openRoof = sampleHazards({
  riskCategory: "III",
  snow: { psf: 20, roofExposure: "fully exposed", thermal: "unheated" },
});
const drift = () =>
  basis.snow.drift(snowy, basis.snow.flatRoof(snowy).balanced, {
    upperLengthMm: 100 * ft,
    lowerLengthMm: 40 * ft,
    stepMm: 9.5 * ft,
  });

/** A site of S_DS 1.0 and S_D1 0.6, entered as site values. */
const strongSite = seismic.design(sampleHazards({ seismic: { s1: 0.4, siteValues: { sms: 1.5, sm1: 0.9 } } }));
const industrial = (computedPeriodS?: number) =>
  seismic.forces(strongSite, {
    ...{ r: 4.5, kind: "steel moment frame", heightMm: 32 * ft },
    storeys: [{ id: "roof", heightMm: 32 * ft, weightN: 1e6 }],
    ...(computedPeriodS !== undefined && { computedPeriodS }),
  });
const oneStorey = (r: number) =>
  seismic.forces(strongSite, {
    ...{ r, kind: "other", heightMm: 9.5 * ft },
    storeys: [{ id: "roof", heightMm: 9.5 * ft, weightN: 40_000 }],
  });

/** What the engine says to each case of shared/published/loads.json, by its id and in its unit. */
export const loadAnswers: Readonly<Record<string, () => number>> = {
  "kz-7-16-B-15ft": () => exposureFactor("2016", "B", 15),
  "kz-7-16-C-15ft": () => exposureFactor("2016", "C", 15),
  "kz-7-16-D-15ft": () => exposureFactor("2016", "D", 15),
  "kz-7-22-B-15ft": () => exposureFactor("2022", "B", 15),
  "kz-7-22-C-15ft": () => exposureFactor("2022", "C", 15),
  "kz-7-22-D-15ft": () => exposureFactor("2022", "D", 15),
  "kz-7-16-B-20ft": () => exposureFactor("2016", "B", 20),
  "kz-7-16-C-20ft": () => exposureFactor("2016", "C", 20),
  "kz-7-16-D-20ft": () => exposureFactor("2016", "D", 20),
  "kz-7-22-B-20ft": () => exposureFactor("2022", "B", 20),
  "kz-7-22-C-20ft": () => exposureFactor("2022", "C", 20),
  "kz-7-22-D-20ft": () => exposureFactor("2022", "D", 20),
  "kz-7-16-B-25ft": () => exposureFactor("2016", "B", 25),
  "kz-7-16-C-25ft": () => exposureFactor("2016", "C", 25),
  "kz-7-16-D-25ft": () => exposureFactor("2016", "D", 25),
  "kz-7-22-B-25ft": () => exposureFactor("2022", "B", 25),
  "kz-7-22-C-25ft": () => exposureFactor("2022", "C", 25),
  "kz-7-22-D-25ft": () => exposureFactor("2022", "D", 25),
  "kz-7-16-B-30ft": () => exposureFactor("2016", "B", 30),
  "kz-7-16-C-30ft": () => exposureFactor("2016", "C", 30),
  "kz-7-16-D-30ft": () => exposureFactor("2016", "D", 30),
  "kz-7-22-B-30ft": () => exposureFactor("2022", "B", 30),
  "kz-7-22-C-30ft": () => exposureFactor("2022", "C", 30),
  "kz-7-22-D-30ft": () => exposureFactor("2022", "D", 30),
  "kz-7-16-B-40ft": () => exposureFactor("2016", "B", 40),
  "kz-7-16-C-40ft": () => exposureFactor("2016", "C", 40),
  "kz-7-16-D-40ft": () => exposureFactor("2016", "D", 40),
  "kz-7-22-B-40ft": () => exposureFactor("2022", "B", 40),
  "kz-7-22-C-40ft": () => exposureFactor("2022", "C", 40),
  "kz-7-22-D-40ft": () => exposureFactor("2022", "D", 40),
  "kz-7-16-B-50ft": () => exposureFactor("2016", "B", 50),
  "kz-7-16-C-50ft": () => exposureFactor("2016", "C", 50),
  "kz-7-16-D-50ft": () => exposureFactor("2016", "D", 50),
  "kz-7-22-B-50ft": () => exposureFactor("2022", "B", 50),
  "kz-7-22-C-50ft": () => exposureFactor("2022", "C", 50),
  "kz-7-22-D-50ft": () => exposureFactor("2022", "D", 50),
  "kz-7-16-B-60ft": () => exposureFactor("2016", "B", 60),
  "kz-7-16-C-60ft": () => exposureFactor("2016", "C", 60),
  "kz-7-16-D-60ft": () => exposureFactor("2016", "D", 60),
  "kz-7-22-B-60ft": () => exposureFactor("2022", "B", 60),
  "kz-7-22-C-60ft": () => exposureFactor("2022", "C", 60),
  "kz-7-22-D-60ft": () => exposureFactor("2022", "D", 60),
  "q-115-C-15": () => velocityPsf("C", 9.5),
  "q-115-B-30": () => velocityPsf("B", 30),
  "ke-1000ft": () => elevationFactor(1000),
  "ke-2000ft": () => elevationFactor(2000),
  "ke-4000ft": () => elevationFactor(4000),
  "ke-5000ft": () => elevationFactor(5000),
  "ke-6000ft": () => elevationFactor(6000),
  "box-windward": () => (broadside()?.windward[0]?.pressurePa ?? NaN) / paPerPsf,
  "box-leeward": () => (broadside()?.leewardPa ?? NaN) / paPerPsf,
  "box-total": () =>
    (((broadside()?.windward[0]?.pressurePa ?? NaN) - (broadside()?.leewardPa ?? NaN)) * 40 * 9.5 * 0.3048 ** 2) /
    newtonPerPound,
  "box-roof-edge": () => ((endwise()?.roof[0]?.mostPa ?? NaN) - boxWind.internalPa) / paPerPsf,
  "snow-flat-30": () => inPsf(basis.snow.flatRoof(snowy).balanced.result.value),
  "snow-flat-III": () => inPsf(basis.snow.flatRoof(openRoof).balanced.result.value),
  "drift-height": () => (drift()?.heightMm ?? NaN) / ft,
  "drift-width": () => (drift()?.widthMm ?? NaN) / ft,
  "drift-peak": () => inPsf(drift()?.peakPa ?? NaN),
  "Fa-D-0.25": () => coefficient("Fa", "D", 0.25),
  "Fa-D-0.5": () => coefficient("Fa", "D", 0.5),
  "Fa-D-0.75": () => coefficient("Fa", "D", 0.75),
  "Fa-D-1": () => coefficient("Fa", "D", 1),
  "Fa-D-1.25": () => coefficient("Fa", "D", 1.25),
  "Fa-D-1.5": () => coefficient("Fa", "D", 1.5),
  "Fv-D-0.1": () => coefficient("Fv", "D", 0.1),
  "Fv-D-0.2": () => coefficient("Fv", "D", 0.2),
  "Fv-D-0.3": () => coefficient("Fv", "D", 0.3),
  "Fv-D-0.4": () => coefficient("Fv", "D", 0.4),
  "Fv-D-0.5": () => coefficient("Fv", "D", 0.5),
  "Fv-D-0.6": () => coefficient("Fv", "D", 0.6),
  "Fa-C-0.25": () => coefficient("Fa", "C", 0.25),
  "Fa-C-0.5": () => coefficient("Fa", "C", 0.5),
  "Fa-C-0.75": () => coefficient("Fa", "C", 0.75),
  "Fa-C-1": () => coefficient("Fa", "C", 1),
  "Fa-C-1.5": () => coefficient("Fa", "C", 1.5),
  "Fv-C-0.1": () => coefficient("Fv", "C", 0.1),
  "Fv-C-0.5": () => coefficient("Fv", "C", 0.5),
  "Fv-C-0.6": () => coefficient("Fv", "C", 0.6),
  sds: () => seismic.design(sampleHazards()).sds,
  sd1: () => seismic.design(sampleHazards()).sd1,
  "period-industrial": () => industrial().periodS,
  "cs-industrial": () => industrial(5).coefficient.result.value,
  "period-box": () => oneStorey(2).periodS,
  "cs-box-2": () => oneStorey(2).coefficient.result.value,
  "cs-box-3": () => oneStorey(3).coefficient.result.value,
  "imposed-dwelling": () => gravity.occupancy("dwelling").pressurePa / 1000,
  "imposed-sleeping-room": () => gravity.occupancy("sleeping room").pressurePa / 1000,
  "imposed-hotel-room": () => gravity.occupancy("hotel room").pressurePa / 1000,
  "imposed-public-corridor": () => gravity.occupancy("public corridor").pressurePa / 1000,
  "imposed-office": () => gravity.occupancy("office").pressurePa / 1000,
  "imposed-lobby": () => gravity.occupancy("lobby").pressurePa / 1000,
  "imposed-corridor-above-ground-floor": () => gravity.occupancy("corridor above ground floor").pressurePa / 1000,
  "imposed-retail-ground-floor": () => gravity.occupancy("retail, ground floor").pressurePa / 1000,
  "imposed-retail-upper-floor": () => gravity.occupancy("retail, upper floor").pressurePa / 1000,
  "imposed-assembly-fixed-seats": () => gravity.occupancy("assembly, fixed seats").pressurePa / 1000,
  "imposed-assembly-movable-seats": () => gravity.occupancy("assembly, movable seats").pressurePa / 1000,
  "imposed-dining": () => gravity.occupancy("dining").pressurePa / 1000,
  "imposed-classroom": () => gravity.occupancy("classroom").pressurePa / 1000,
  "imposed-stair": () => gravity.occupancy("stair").pressurePa / 1000,
  "imposed-light-storage": () => gravity.occupancy("light storage").pressurePa / 1000,
  "imposed-heavy-storage": () => gravity.occupancy("heavy storage").pressurePa / 1000,
  "imposed-roof": () => gravity.occupancy("roof").pressurePa / 1000,
  "imposed-roof-garden": () => gravity.occupancy("roof garden").pressurePa / 1000,
  "reduced-floor": () =>
    inPsf(
      gravity.reducedFloor({ pressurePa: 50 * paPerPsf, areaM2: 400 * ft2, elementFactor: 2, floors: 1 }).result.value,
    ),
  "roof-live": () => inPsf(gravity.roofLive(400 * ft2).result.value),
  "soil-crystalline-bedrock": () => soil("crystalline bedrock").bearingPa / 1000,
  "soil-side-crystalline-bedrock": () => soil("crystalline bedrock").lateralPaPerM / 1000,
  "soil-sedimentary-or-foliated-rock": () => soil("sedimentary or foliated rock").bearingPa / 1000,
  "soil-side-sedimentary-or-foliated-rock": () => soil("sedimentary or foliated rock").lateralPaPerM / 1000,
  "soil-gravel": () => soil("gravel").bearingPa / 1000,
  "soil-side-gravel": () => soil("gravel").lateralPaPerM / 1000,
  "soil-sand": () => soil("sand").bearingPa / 1000,
  "soil-side-sand": () => soil("sand").lateralPaPerM / 1000,
  "soil-clay-or-silt": () => soil("clay or silt").bearingPa / 1000,
  "soil-side-clay-or-silt": () => soil("clay or silt").lateralPaPerM / 1000,
};
