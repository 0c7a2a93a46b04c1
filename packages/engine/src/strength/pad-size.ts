import type { Pad } from "@cornerway/schema";
import type { Check } from "../checks/check.ts";
import type { ElementResult, PadSize } from "./element-result.ts";
import type { PadChecks } from "./pad-parts.ts";

/** Steps that are drawn, and the largest pad that is looked at. */
const STEP_MM = 100;
const MOST = { sideMm: 3000, depthMm: 1500 };

/**
 * Names for each pad that is too small the one that would do: of all squares no smaller than drawn, that keep clear of
 * the next pad, the one of least concrete on which ground, concrete and uplift all stand under the forces of the one drawn.
 * A strip is asked for where there is none: nothing is named.
 */
export function withPadSizes(
  results: readonly ElementResult[],
  pads: readonly Pad[],
  checksOf: (size: PadSize) => PadChecks,
): ElementResult[] {
  const own = new Map(pads.map((pad) => [pad.id, results.filter(({ ownerId }) => ownerId === pad.id)]));
  const sizes = new Map<string, PadSize | undefined>();
  const sizeFor = (pad: Pad): PadSize | undefined => {
    if (!sizes.has(pad.id)) sizes.set(pad.id, leastSize(pad, own.get(pad.id) ?? [], roomFor(pad, pads), checksOf));
    return sizes.get(pad.id);
  };
  const byId = new Map(pads.map((pad) => [pad.id, pad]));
  return results.map((result) => {
    const pad = byId.get(result.ownerId);
    if (pad === undefined || (result.utilisation ?? 0) <= 1 || result.forceN === undefined) return result;
    const size = sizeFor(pad);
    return size === undefined ? result : { ...result, wouldDo: size };
  });
}

function leastSize(
  pad: Pad,
  own: readonly ElementResult[],
  roomMm: number,
  checksOf: (size: PadSize) => PadChecks,
): PadSize | undefined {
  const drawn = { sideMm: Math.max(pad.lengthUm, pad.widthUm) / 1000, depthMm: pad.depthUm / 1000 };
  const stands = (size: PadSize): boolean => {
    const checks = checksOf(size);
    return own.every(({ place, forceN }) => {
      if (forceN === undefined || !isSized(place)) return true;
      return checks[place](forceN).every(within);
    });
  };
  let least: PadSize | undefined;
  for (const depthMm of steps(drawn.depthMm, MOST.depthMm))
    for (const sideMm of steps(drawn.sideMm, Math.min(MOST.sideMm, roomMm))) {
      const size = { sideMm, depthMm };
      if (least !== undefined && volume(size) >= volume(least)) break;
      if (stands(size)) least = size;
    }
  return least;
}

const isSized = (place: string): place is keyof PadChecks =>
  place === "ground" || place === "concrete" || place === "its own weight";

const within = (check: Check): boolean => check.ok && check.utilisation <= 1;

const volume = ({ sideMm, depthMm }: PadSize): number => sideMm * sideMm * depthMm;

function steps(from: number, to: number): number[] {
  const first = Math.ceil(from / STEP_MM);
  return Array.from({ length: Math.max(0, Math.floor(to / STEP_MM) - first + 1) }, (_, n) => (first + n) * STEP_MM);
}

/** From its middle to that of the nearest other pad: neighbours grow as it does. */
const roomFor = (pad: Pad, pads: readonly Pad[]): number =>
  pads
    .filter(({ id }) => id !== pad.id)
    .map((other) => Math.max(Math.abs(other.xUm - pad.xUm), Math.abs(other.yUm - pad.yUm)) / 1000)
    .reduce((least, next) => Math.min(least, next), Infinity);
