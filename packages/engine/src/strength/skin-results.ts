import type { Opening, Scheme } from "@cornerway/schema";
import { corrugatedSheet, folds, type CorrugatedSheet } from "../catalog/sections/corrugated-sheet.ts";
import { openingFrame } from "../catalog/sections/frame-tubes.ts";
import { steels, type Steel } from "../catalog/materials.ts";
import type { Check } from "../checks/check.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import { barUnderPressure, sheetUnderPressure, type SpanPressure } from "../checks/wind-on-parts.ts";
import { skinPressures, type SkinPressure } from "../loads/cladding-parts.ts";
import type { SiteActions } from "../loads/site-actions.ts";
import type { ElementResult } from "./element-result.ts";
import { roofResults } from "./roof-results.ts";
import { statedResult } from "./stated-result.ts";
import type { StrengthBasis } from "./strength-basis.ts";

type Accepted = Extract<SiteActions, { accepted: true }>;

/**
 * Component pressures on sheets, and on the bars of openings beside what the model's forces use of them. `found` are the
 * results of the runs. Nothing where the project has no hazards.
 */
export function skinResults(
  scheme: Scheme,
  { building, site, roofLive }: Accepted,
  basis: StrengthBasis,
  found: readonly ElementResult[],
): ElementResult[] {
  const { hazards } = scheme.basis;
  if (hazards === null || site === undefined) return [];
  const { coefficient } = site.wind.pressures.enclosure;
  const pressures = skinPressures(building, scheme, basis.loads, hazards, coefficient);
  const openings = new Map(scheme.openings.map((opening) => [opening.id, opening]));
  const checks = pressures.flatMap((skin) => checksOf(skin, openings, basis.factored, found));
  return [...worstOfEach(checks), ...roofResults(scheme, [roofLive.action, ...site.snow.cases], basis)];
}

function checksOf(
  skin: SkinPressure,
  openings: ReadonlyMap<string, Opening>,
  basis: CheckBasis,
  found: readonly ElementResult[],
): ElementResult[] {
  const { containerId: ownerId } = skin;
  const stated = (place: string, check: Check, proved?: Check): ElementResult =>
    statedResult({ ownerId, place, run: "W on the part by itself" }, check, proved);
  const bent = (place: string, { taken, proved }: BentSheet): ElementResult => stated(place, taken, proved);
  const opening = skin.openingId === undefined ? undefined : openings.get(skin.openingId);
  if (skin.part === "roof sheet") return [bent("wind", bentSheet("roof sheet", skin, roofSheet, basis))];
  if (skin.part === "wall sheet") {
    const end = isEnd(skin);
    return [bent("wind", bentSheet(end ? "end sheet" : "side sheet", skin, end ? endSheet : sideSheet, basis))];
  }
  if (opening === undefined) return [];
  const used = (element: string): number =>
    found
      // its welds take no part in how a bar bends
      .filter((result) => result.ownerId === ownerId && result.element === element && result.limitState !== "weld")
      .reduce((most, { utilisation = 0 }) => Math.max(most, utilisation), 0);
  if (skin.part === "jamb")
    return jambChecks(skin, opening, basis, used("jamb")).map(([at, { taken, proved }]) => stated(at, taken, proved));
  if (skin.part === "header" && opening.framed) {
    const bar = openingFrame(opening).header;
    const check = bentBar("added beam", skin, bar, opening.heightUm / 2000, used("added beam"), basis);
    return [stated(`over ${opening.tag}, wind`, check)];
  }
  return [];
}

const sideSheet = corrugatedSheet(folds.side, 1.6);
const endSheet = corrugatedSheet(folds.end, 2);
const roofSheet = corrugatedSheet(folds.roof, 2);

/** Ends are told from sides by the face the pressure stands on. */
const isEnd = ({ face }: SkinPressure): boolean => face === "front" || face === "door";

/** The strip of sheet that stands beside a window, mm: two folds of a side sheet. */
const STRIP_MM = 556;

/**
 * A full-height frame has its jamb; a window, or what fills a hole that is not framed, hands its half width to the folds beside
 * it, which run from rail to rail. What fills a wall that is out stands in posts of its own.
 */
function jambChecks(skin: SkinPressure, opening: Opening, basis: CheckBasis, inPlane: number): [string, BentSheet][] {
  const halfMm = opening.widthUm / 2000;
  const isWindow = opening.heightUm / 1000 < skin.spanMm - STRIP_MM;
  if (!isWindow && !opening.framed && opening.use === "open-wall") return [];
  if (isWindow || !opening.framed) {
    const end = isEnd(skin);
    const [element, sheet] = end ? (["end sheet", endSheet] as const) : (["side sheet", sideSheet] as const);
    return [[`beside ${opening.tag}, wind`, bentSheet(element, skin, sheet, basis, (halfMm + STRIP_MM) / STRIP_MM)]];
  }
  const bar = bentBar("jamb", skin, openingFrame(opening).jamb, halfMm, inPlane, basis);
  return [[`of ${opening.tag}, wind`, { taken: bar }]];
}

/** A check at the yield taken, and at the one a record would prove; bought steel has no other. */
type BentSheet = { readonly taken: Check; readonly proved?: Check };

function bentSheet(
  element: "side sheet" | "end sheet" | "roof sheet",
  skin: SkinPressure,
  sheet: CorrugatedSheet,
  basis: CheckBasis,
  gathers = 1,
): BentSheet {
  const at = (steel: Steel): Check =>
    sheetUnderPressure(element, spanOf(skin), gathers, basis.sheetBending(sheet, steel));
  return { taken: at(steels.unproved), proved: at(steels.weathering) };
}

function bentBar(
  element: "jamb" | "added beam",
  skin: SkinPressure,
  section: ReturnType<typeof openingFrame>["jamb"],
  carriesMm: number,
  inPlane: number,
  basis: CheckBasis,
): Check {
  const { spanMm } = skin;
  const lengths = { strongMm: spanMm, weakMm: spanMm, twistMm: spanMm };
  const { weak } = basis.memberStrengths({ element, section, steel: steels.tube, lengths, unbracedMm: spanMm, cb: 1 });
  return barUnderPressure(element, spanOf(skin), carriesMm, inPlane, weak);
}

/** Sheet and bars resist both ways alike: the greater of pressure and suction. */
function spanOf({ pressure, spanMm, cladding }: SkinPressure): SpanPressure {
  const { inwardPa, outwardPa, workings } = pressure;
  const meaning = `${cladding.surface}, ${cladding.zone} zone, ${cladding.effectiveAreaM2.toFixed(1)} m²`;
  return { pressurePa: Math.max(inwardPa, outwardPa), spanMm, meaning, from: workings };
}

/** A part that meets the weather in several places stands in the worst of them. */
function worstOfEach(results: readonly ElementResult[]): ElementResult[] {
  const worst = new Map<string, ElementResult>();
  for (const result of results) {
    const known = worst.get(result.id);
    if (known === undefined || (result.utilisation ?? Infinity) > (known.utilisation ?? Infinity))
      worst.set(result.id, result);
  }
  return [...worst.values()];
}
