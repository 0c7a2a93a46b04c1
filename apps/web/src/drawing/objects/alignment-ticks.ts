import { placeContainer, type Alignment, type PlacedFitting } from "@cornerway/engine";
import type { PointMm, Scheme } from "@cornerway/schema";

/** A place where a fitting would land, and how far the unit still is from there, mm. */
export type AlignmentTick = { key: string; at: PointMm; offXMm: number; offYMm: number; first: boolean };

const mostShown = 4;
/** Nearer than this the unit is there, mm. */
const thereMm = 1;

/** The top fittings of the units below on which fittings would land, by unit. */
export function topFittings(stood: Scheme, found: readonly Alignment[]): TopFittings {
  const ids = new Set(found.flatMap(({ landings }) => landings.map(({ onId }) => onId)));
  const below = stood.containers.filter(({ id }) => ids.has(id));
  return new Map(below.map((unit) => [unit.id, placeContainer(unit).topFittings]));
}

type TopFittings = ReadonlyMap<string, readonly PlacedFitting[]>;

export interface Aligning {
  /** The scheme the alignments were found in. */
  stood: Scheme;
  /** Where the unit is now. */
  shown: Scheme;
  unitId: string;
  found: readonly Alignment[];
  tops: TopFittings;
}

/** The places where fittings of a unit land on fittings below it, without moving what is below. */
export function alignmentTicks({ stood, shown, unitId, found, tops }: Aligning): AlignmentTick[] {
  const [was, is] = [stood, shown].map((scheme) => scheme.containers.find(({ id }) => id === unitId));
  if (was === undefined || is === undefined || was.zUm !== is.zUm) return [];
  const [goneX, goneY] = [(is.xUm - was.xUm) / 1000, (is.yUm - was.yUm) / 1000];
  return found
    .filter(({ gap, dxMm, dyMm }) => gap === undefined && Math.hypot(dxMm - goneX, dyMm - goneY) > thereMm)
    .slice(0, mostShown)
    .flatMap(({ landings, dxMm, dyMm }, which) =>
      landings.flatMap(({ onId, onFitting }, index): AlignmentTick[] => {
        const at = tops.get(onId)?.find(({ name }) => name === onFitting)?.at;
        if (at === undefined) return [];
        const key = `${which} ${onId} ${onFitting}`;
        return [{ key, at, offXMm: dxMm - goneX, offYMm: dyMm - goneY, first: index === 0 }];
      }),
    );
}
