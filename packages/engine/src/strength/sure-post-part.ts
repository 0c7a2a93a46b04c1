import { steels, type Steel } from "../catalog/materials.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { MemberDemand } from "../checks/member-demand.ts";
import type { Capacities } from "../checks/member-utilisation.ts";
import type { PostStrengths } from "../checks/post-bounds.ts";
import {
  boundsOf,
  postDemandRoom,
  proofLoad,
  turn,
  turnOther,
  type PostDemandRoom,
  type PostStretch,
} from "./corner-post-part.ts";
import { demandRoom, DemandsAlong } from "./demands-along.ts";
import { linePlaces } from "./line-places.ts";
import { MemberBound } from "./member-bound.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";
import { surePart } from "./sure-part.ts";

/**
 * A corner post by what is sure of it: beyond both bounds and the proof load of its type. Held along its length by sheet, it does
 * not bow; how its outline stands in the corner is assumed, so it has to be too much both ways round.
 */
export function surePostPart(post: PostStretch, basis: CheckBasis): StrengthPart {
  const { ownerId, element, place, beams } = post;
  const capacities = atBest(boundsOf(post, steels.unproved, basis).upper);
  const least = Math.min(capacities.headPressed ?? Infinity, capacities.weak ?? Infinity);
  const eitherWay = { ...capacities, headPressed: least, footPressed: least, weak: least };
  const bound = new MemberBound(eitherWay, { strongN: Infinity, weakN: Infinity });
  const lengthsMm = Float64Array.from(beams, ({ lengthMm }) => lengthMm);
  const linesIn = linePlaces(beams);
  const along = new DemandsAlong();
  const room = demandRoom();
  const ways = [new Way(false, capacities), new Way(true, capacities)] as const;
  /** The way round in which it is used less. */
  const milder = (solved: SolvedRun, above: number): Way => {
    for (const way of ways) way.most = above;
    const { values, at } = solved.inner(ownerId);
    const lines = linesIn(at);
    const next = (from: number): number => bound.next(from, lines, lengthsMm, values, above);
    for (let b = next(0); b < lines.length; b = next(b + 1)) {
      along.take(values, lines[b] ?? 0, lengthsMm[b] ?? 0);
      for (let n = 0; n < along.count; n++) {
        along.write(n, room);
        for (const way of ways) way.look(room);
      }
    }
    return ways[1].most < ways[0].most ? ways[1] : ways[0];
  };
  return surePart(
    {
      id: `${ownerId} ${element} ${place}`,
      ...{ ownerId, element, place, level: "strength" },
      use: (solved, above = 0) => milder(solved, above).most,
      decide: (solved) => {
        const { most, worst } = milder(solved, 0);
        const checkAt = (steel: Steel) =>
          basis.cornerPostAtBest(element, worst, boundsOf(post, steel, basis), proofLoad);
        return {
          limitState: "axial force with bending",
          utilisation: most,
          checks: (steel = steels.unproved) => [checkAt(steel)],
        };
      },
    },
    "both bounds",
  );
}

/** One way round of the outline in the corner. */
class Way {
  most = 0;
  worst = postDemandRoom();
  private readonly isOther: boolean;
  private readonly capacities: Capacities;
  private readonly demand: PostDemandRoom = postDemandRoom();

  constructor(isOther: boolean, capacities: Capacities) {
    [this.isOther, this.capacities] = [isOther, capacities];
  }

  look(demand: MemberDemand): void {
    turn(demand, NO_BOW, this.demand);
    if (this.isOther) turnOther(demand, NO_BOW, this.demand);
    const { compression, tension, headPressed, weak } = this.capacities;
    const { axialN, mxNmm, myNmm } = this.demand;
    const axial = axialN >= 0 ? compression : tension;
    const use = shareOf(axialN, axial) + shareOf(mxNmm, headPressed) + shareOf(myNmm, weak);
    if (use > this.most) [this.most, this.worst] = [use, { ...this.demand }];
  }
}

const NO_BOW = 1;

const shareOf = (force: number, strength: number | undefined): number => Math.abs(force) / (strength ?? Infinity);

/** Bending about the outline's x stands for the strong axis. What is refused, and shear and torsion, which have no upper bound, say nothing. */
function atBest({ compression, tension, mx, my }: PostStrengths): Capacities {
  const available = (strength: PostStrengths["mx"]): number => (strength.ok ? strength.available : Infinity);
  const strong = available(mx);
  return {
    family: "structural steel",
    compression: Math.max(compression.ok ? compression.available : 0, proofLoad.result.value),
    tension: available(tension),
    ...{ headPressed: strong, footPressed: strong, weak: available(my) },
    ...{ shear: Infinity, shearWeak: Infinity, torsion: Infinity },
  };
}
