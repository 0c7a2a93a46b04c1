import type { Opening } from "@cornerway/schema";
import type { AssumptionId } from "../strength/assumption-sets.ts";
import type { ElementResult } from "../strength/element-result.ts";
import { holdsNeeded } from "../strength/holds-needed.ts";
import { liftOf } from "../strength/lift-results.ts";
import type { PartWorst } from "../strength/screen.ts";
import type { StrengthReason } from "../strength/strength-reason.ts";
import { isTold, toldOnce } from "../strength/sure-part.ts";
import { findingOf, type Judged } from "./judged.ts";
import { TrialOf, type Looking, type Trial } from "./trial.ts";
import type { TrialGround, TrialSet } from "./trial-ground.ts";
import { TriedWalls } from "./tried-walls.ts";

/** What is found with openings as tried, with the vectors behind it. */
export type Found = {
  readonly judged: Judged;
  readonly worsts: readonly PartWorst[];
  /** Runs that stood and no longer do, with the set of each. */
  readonly fallen: readonly { readonly set: AssumptionId; readonly run: string }[];
};

/** All but what is asked of the unit inside while it hangs, under these sets. */
export type Look = (sets: readonly TrialSet[]) => Found;

/** Looks at the unit of a chart with its openings as tried. */
export class Finder {
  /** How many times. */
  looked = 0;
  private readonly ground: TrialGround;
  private readonly walls: TriedWalls;

  constructor(ground: TrialGround) {
    this.ground = ground;
    this.walls = new TriedWalls(ground);
  }

  /** Looks at these openings, under any of the sets given. */
  look(openings: readonly Opening[], sets: readonly TrialSet[], how: Looking): Look {
    this.looked++;
    const looking = new TrialOf(this.ground, openings, sets, how);
    const leftOut = this.lacking(openings);
    return (under) => this.foundIn(looking.under(under), under, leftOut);
  }

  private foundIn({ worsts, leans, solved }: Trial, sets: readonly TrialSet[], leftOut: StrengthReason[]): Found {
    const { scheme, ownBearings } = this.ground;
    const fallen = solved.flatMap((one, n) =>
      one.fallen.map(({ id }) => ({ set: sets[n]?.set.id ?? missing(), run: id })),
    );
    const judged: Judged = {
      results: [...toldOnce(worsts.filter(({ part, asDrawn }) => isTold(part, asDrawn)).map(findingOf)), ...leans],
      holds: holdsNeeded(
        ownBearings,
        solved.flatMap((one) => one.solved),
        scheme.basis.friction,
      ),
      fallen: fallen.map(({ run }) => run),
      leftOut,
    };
    return { judged, worsts, fallen };
  }

  /** The unit as it hangs, with what is cut in it before the pick, and the fittings it hangs from. */
  lifted(openings: readonly Opening[]): ElementResult[] {
    const { basis, memory, scheme, otherOpenings, unit } = this.ground;
    const hanging = { ...scheme, openings: [...otherOpenings, ...openings] };
    const containers = scheme.containers.filter(({ id }) => id === unit.id);
    return containers.flatMap((one) => liftOf(hanging, one, basis, memory));
  }

  /** What the unit lacks sideways with these openings, which takes no solution. */
  lacking(openings: readonly Opening[]): StrengthReason[] {
    return this.walls.reasons(openings);
  }
}

function missing(): never {
  throw new Error("each set has its runs");
}
