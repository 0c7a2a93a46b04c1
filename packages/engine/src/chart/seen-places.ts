import type { ChartAnswer } from "./chart.ts";
import type { Place } from "./chart-side.ts";
import { kindOf, type Finding } from "./judged.ts";
import type { TrialSet } from "./trial-ground.ts";

/** A part that decided where every deciding set was looked at, with its use under each. */
type Decided = At & {
  readonly isOver: boolean;
  readonly part: Finding;
};

type OneSet = Pick<TrialSet, "set">;

type At = { readonly framed: boolean; readonly place: Place };

/**
 * What was seen along one side so far. How uses differ from set to set changes slowly with place and width: what decides at a
 * place is guessed from the nearest that was looked at under every deciding set, and asked of one or two sets.
 */
export class SeenPlaces {
  private readonly decided: Decided[] = [];
  private readonly answers: (At & { readonly isOver: boolean })[] = [];

  /** `results`: under every deciding set. */
  noteWhole(at: At, { verdict, why }: ChartAnswer, results: readonly Finding[]): void {
    const part = "partId" in why ? results.find(({ id }) => id === why.partId) : undefined;
    if (part !== undefined) this.decided.push({ ...at, isOver: verdict === "does not work", part });
  }

  note(at: At, { verdict }: ChartAnswer): void {
    this.answers.push({ ...at, isOver: verdict === "does not work" });
  }

  /** Whether nothing worked under any set at the nearest place that was answered. */
  isLikelyOver(at: At): boolean {
    return nearest(this.answers, at)?.isOver ?? false;
  }

  /** Whether a part of one of these units decided at the nearest place of any kind. */
  isDecidedIn(at: At, unitIds: readonly string[]): boolean {
    const near = [this.overAt(at), nearest(this.decided, at)];
    return near.some((one) => one !== undefined && unitIds.includes(one.part.ownerId));
  }

  /** The set under which what is beyond its strength is likely best; undefined where none was seen. */
  bestOf<T extends OneSet>(at: At, sets: readonly T[]): T | undefined {
    const over = this.overAt(at);
    return over && least(sets, (set) => useUnder(over.part, set));
  }

  /** The set under which parts are likely worst; undefined where none was seen. */
  worstOf<T extends OneSet>(at: At, sets: readonly T[]): T | undefined {
    const near = nearest(this.decided, at);
    return near && least(sets, (set) => -useUnder(near.part, set));
  }

  /**
   * Whether a part beyond its strength in the sets seen is clearly so in the others, were its uses to stand to each other as
   * those of the nearest part of its kind.
   */
  isClearlyOver(at: At, part: Finding, seen: readonly OneSet[], unseen: readonly OneSet[]): boolean {
    const alike = nearest(
      this.decided.filter((one) => one.isOver && kindOf(one.part) === kindOf(part)),
      at,
    );
    const from = alike && least(seen, ({ set }) => part.envelope[set.id] ?? Infinity);
    if (alike === undefined || from === undefined) return false;
    const scale = useUnder(part, from) / useUnder(alike.part, from);
    return unseen.every((set) => scale * useUnder(alike.part, set) > CLEARLY);
  }

  private overAt(at: At): Decided | undefined {
    return nearest(
      this.decided.filter(({ isOver }) => isOver),
      at,
    );
  }
}

/** Beyond this use a guessed one is taken to be beyond its strength. Judged, no published source. */
const CLEARLY = 1.1;

/** Without end where no strength can be stated; no use where it was not seen. */
function useUnder({ envelope }: Finding, { set }: OneSet): number {
  const use = envelope[set.id];
  return use === undefined ? NaN : (use ?? Infinity);
}

function nearest<T extends At>(all: readonly T[], { framed, place }: At): T | undefined {
  const alike = all.filter((one) => one.framed === framed);
  const off = (one: At): number =>
    Math.abs(one.place.centreMm - place.centreMm) + Math.abs(one.place.widthMm - place.widthMm);
  return least(alike.length > 0 ? alike : all, off);
}

/** The first of the least; those without a value are none. */
function least<T>(all: readonly T[], valueOf: (one: T) => number): T | undefined {
  let [found, least]: [T | undefined, number] = [undefined, Infinity];
  for (const one of all) {
    const value = valueOf(one);
    if (!Number.isNaN(value) && (found === undefined || value < least)) [found, least] = [one, value];
  }
  return found;
}
