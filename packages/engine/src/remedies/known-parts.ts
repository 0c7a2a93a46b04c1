import type { LimitState } from "../checks/limit-state.ts";
import type { ElementResult } from "../strength/element-result.ts";
import type { LivePart } from "../strength/live-strength.ts";
import { alsoAsSure } from "../strength/sure-part.ts";

/** A part with what it uses of its strength: infinite where a strength that acts is refused or not covered. */
export type UsedPart = Pick<ElementResult, "id" | "ownerId" | "element" | "place" | "sureOf"> & {
  readonly use: number;
  /** Absent where only the governing vectors were looked at. */
  readonly limitState?: LimitState;
};

/** As drawn, or once what lifts is held: whichever is greater. */
export function usedOf(result: ElementResult): UsedPart {
  const { id, ownerId, element, place, sureOf, limitState, utilisation, refused, ifHeldDown, covered } = result;
  const unknown = refused !== undefined || covered === "not covered";
  const held = ifHeldDown === undefined ? 0 : (ifHeldDown ?? Infinity);
  const use = unknown ? Infinity : Math.max(utilisation ?? 0, held);
  return { id, ownerId, element, place, ...(sureOf !== undefined && { sureOf }), limitState, use };
}

export const usedLive = ({ id, ownerId, element, place, sureOf, utilisation }: LivePart): UsedPart => ({
  ...{ id, ownerId, element, place },
  ...(sureOf !== undefined && { sureOf }),
  use: utilisation ?? Infinity,
});

/** What each part used before a change: the same part, or the worst of its kind in that wall where openings divide it anew. */
export class KnownParts {
  private readonly uses = new Map<string, number>();
  private readonly judged = new Set<LimitState>();

  constructor(results: readonly ElementResult[]) {
    for (const result of results.flatMap(alsoAsSure)) {
      const part = usedOf(result);
      const kind = kindOf(part);
      this.judged.add(result.limitState);
      this.note(part.id, part.use);
      if (kind !== undefined) this.note(kind, part.use);
    }
  }

  private note(key: string, use: number): void {
    this.uses.set(key, Math.max(this.uses.get(key) ?? 0, use));
  }

  /**
   * Judgement. A change may bring no part beyond its strength that was within it, and may not raise one that was beyond it: such
   * a part has a mark of its own by the same check, which stays open and is told. For a unit that does not stand the others are held
   * against the building without it as well: what fails there fails for another reason. Two answers are one where the model of walls cannot tell them apart. A check that could be made nowhere while the building did not stand says nothing of the change.
   */
  isWorse(part: UsedPart): boolean {
    if (part.use <= 1) return false;
    const known = this.uses.get(part.id) ?? this.uses.get(kindOf(part) ?? "");
    // what is sure of a part is told only where it is too much; that its part was judged tells that it was not
    const wasJudged = known !== undefined || (part.sureOf !== undefined && this.uses.has(part.sureOf));
    if (!wasJudged && part.limitState !== undefined && !this.judged.has(part.limitState)) return false;
    const before = known ?? 0;
    return before <= 1 || part.use > before * (1 + WALL_MODEL_ACCURACY);
  }
}

/** Whole and framed walls are within 1.3 % of explicit folds (shared/reference/walls.json): less is no difference. */
export const WALL_MODEL_ACCURACY = 0.013;

/** Wall, element and check of a part, whatever the stretch; undefined where one thing bears on another: that is a place. */
function kindOf({ ownerId, element, place, sureOf }: UsedPart): string | undefined {
  if (place.startsWith("at ")) return undefined;
  const [stretch = "", ...checks] = place.split(", ");
  const [wall = ""] = stretch.split(/ over | at | \d/);
  return [ownerId, element, wall, ...checks, ...(sureOf === undefined ? [] : ["what is sure"])].join(" ");
}
