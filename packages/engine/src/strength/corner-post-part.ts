import { containerMembers } from "../catalog/sections/container-members.ts";
import { steels, type Steel } from "../catalog/materials.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { Check } from "../checks/check.ts";
import type { PostDemand, PostElement } from "../checks/corner-post.ts";
import { isoProofLoad } from "../checks/iso-proof-load.ts";
import type { Capacities } from "../checks/member-utilisation.ts";
import type { MemberDemand } from "../checks/member-demand.ts";
import type { PostBounds, PostStrengths } from "../checks/post-bounds.ts";
import type { Resistance } from "../working/resistance.ts";
import { elasticN, enlargement } from "./bowed-demand.ts";
import { demandRoom, DemandsAlong } from "./demands-along.ts";
import { linePlaces } from "./line-places.ts";
import { MemberBound } from "./member-bound.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { Screened, StrengthPart } from "./strength-part.ts";

export type PostStretch = {
  readonly ownerId: string;
  readonly element: PostElement;
  readonly place: string;
  readonly clearMm: number;
  /** Whole sheet on both faces that meet in it: it is held along its length. */
  readonly sheeted: boolean;
  readonly beams: readonly { readonly id: string; readonly lengthMm: number }[];
};

/**
 * A corner post between its two bounds: held along its length where whole sheet stands on both its faces, else alone; the
 * upper one tells whether sheet could help. That sheet holds it: across a front post the folds give by their accordion and
 * shear √(E_h·G t)·π/H = 7 N/mm per mm, fifty times what 100 kN of compression asks over its height (derived), and the ISO
 * stacking test presses 848 kN off its middle into posts with their sheet. How its outline stands in the corner is assumed,
 * so both ways round are tried.
 */
export function cornerPostPart(post: PostStretch, basis: CheckBasis): StrengthPart {
  const { ownerId, element, place, clearMm, sheeted, beams } = post;
  const boundsAt = (steel: Steel): PostBounds => boundsOf(post, steel, basis);
  const bounds = boundsAt(steels.unproved);
  const upper = shares(bounds.upper);
  const lower = sheeted ? upper : shares(bounds.lower);
  const limitN = elasticN(leastPostInertiaMm4, clearMm);
  const bound = new MemberBound(lower.capacities, { strongN: limitN, weakN: limitN }, true);
  const lengthsMm = Float64Array.from(beams, ({ lengthMm }) => lengthMm);
  const linesIn = linePlaces(beams);
  const along = new DemandsAlong();
  const room = demandRoom();
  const demand = postDemandRoom();
  const eachTurned = (solved: SolvedRun, visit: (demand: PostDemand) => void): void => {
    const { values, at } = solved.inner(ownerId);
    const lines = linesIn(at);
    for (let b = 0; b < lines.length; b++) {
      along.take(values, lines[b] ?? 0, beams[b]?.lengthMm ?? 0);
      for (let n = 0; n < along.count; n++) {
        along.write(n, room);
        bothWays(room, enlargement(room.axialN, limitN), demand, visit);
      }
    }
  };
  const decided = (demand: PostDemand): Screened => {
    const [bent, shear] = [lower.bent(demand), lower.shear(demand)];
    return {
      limitState: shear > bent ? "shear" : "axial force with bending",
      utilisation: Math.max(bent, shear),
      upper: upper.most(demand),
      checks: (steel = steels.unproved) => boundChecks(element, demand, boundsAt(steel), sheeted, basis),
    };
  };
  return {
    id: `${ownerId} ${element} ${place}`,
    ownerId,
    element,
    place,
    level: "strength",
    use: (solved, above = 0) => {
      const { values, at } = solved.inner(ownerId);
      const lines = linesIn(at);
      let most = above;
      for (
        let b = bound.next(0, lines, lengthsMm, values, most);
        b < lines.length;
        b = bound.next(b + 1, lines, lengthsMm, values, most)
      ) {
        along.take(values, lines[b] ?? 0, lengthsMm[b] ?? 0);
        for (let n = 0; n < along.count; n++) {
          along.write(n, room);
          const bow = enlargement(room.axialN, limitN);
          turn(room, bow, demand);
          most = Math.max(most, lower.most(demand));
          turnOther(room, bow, demand);
          most = Math.max(most, lower.most(demand));
        }
      }
      return most;
    },
    decide: (solved) => {
      let worst: PostDemand | undefined;
      let most = -1;
      eachTurned(solved, (demand) => {
        const use = lower.most(demand);
        if (use > most) [worst, most] = [{ ...demand }, use];
      });
      if (worst === undefined) throw new RangeError(`${ownerId} ${element} ${place} has no lines`);
      return decided(worst);
    },
  };
}

/** What posts are tested for at the least. */
export const proofLoad = isoProofLoad({ edition: "1990" });

export const boundsOf = ({ element, clearMm }: PostStretch, steel: Steel, basis: CheckBasis): PostBounds =>
  element === "front corner post" ? basis.frontPost({ steel, clearMm }) : basis.doorPost({ steel, clearMm });

function boundChecks(
  element: PostElement,
  demand: PostDemand,
  bounds: PostBounds,
  sheeted: boolean,
  basis: CheckBasis,
): Check[] {
  const finding = basis.cornerPost(element, demand, bounds, proofLoad);
  if ("refused" in finding)
    return [{ ok: false, element, limitState: "axial force with bending", why: finding.refused }];
  return [sheeted ? finding.upper : finding.lower];
}

/** A demand that is written over from place to place. */
export type PostDemandRoom = { -readonly [K in keyof PostDemand]: PostDemand[K] };

export const postDemandRoom = (): PostDemandRoom => ({
  axialN: 0,
  torsionNmm: 0,
  mxNmm: 0,
  myNmm: 0,
  shearXN: 0,
  shearYN: 0,
});

/** Moments enlarged by the bow of the post alone, by its weaker axis; either axis of the model may be the outline's x. */
function bothWays(demand: MemberDemand, bow: number, room: PostDemandRoom, visit: (demand: PostDemand) => void): void {
  turn(demand, bow, room);
  visit(room);
  turnOther(demand, bow, room);
  visit(room);
}

export function turn(demand: MemberDemand, bow: number, room: PostDemandRoom): void {
  room.axialN = demand.axialN;
  room.torsionNmm = demand.torsionNmm;
  room.mxNmm = bow * demand.momentStrongNmm;
  room.myNmm = bow * demand.momentWeakNmm;
  room.shearXN = demand.shearWeakN;
  room.shearYN = demand.shearStrongN;
}

/** The outline the other way round. */
export function turnOther(demand: MemberDemand, bow: number, room: PostDemandRoom): void {
  room.mxNmm = bow * demand.momentWeakNmm;
  room.myNmm = bow * demand.momentStrongNmm;
  room.shearXN = demand.shearStrongN;
  room.shearYN = demand.shearWeakN;
}

const { ixMm4, iyMm4 } = containerMembers["front corner post"];
export const leastPostInertiaMm4 = Math.min(ixMm4, iyMm4);

/** Shares of one bound's strengths on plain numbers. */
function shares(strengths: PostStrengths) {
  const available = (strength: Resistance): number => (strength.ok ? strength.available : 0);
  const [pressed, pulled] = [available(strengths.compression), available(strengths.tension)];
  const [mx, my] = [available(strengths.mx), available(strengths.my)];
  const [vx, vy, t] = [available(strengths.shearX), available(strengths.shearY), available(strengths.torsion)];
  const bent = (demand: PostDemand): number =>
    share(demand.axialN, demand.axialN >= 0 ? pressed : pulled) + share(demand.mxNmm, mx) + share(demand.myNmm, my);
  const shear = (demand: PostDemand): number => {
    const [x, y] = [share(demand.shearXN, vx), share(demand.shearYN, vy)];
    return (strengths.closed ? Math.max(x, y) : x + y) + share(demand.torsionNmm, t);
  };
  const [m, v] = [Math.min(mx, my), Math.min(vx, vy)];
  /** The least of either axis for both, for a bound. */
  const capacities: Capacities = {
    ...{ family: "structural steel", compression: pressed, tension: pulled },
    ...{ headPressed: m, footPressed: m, weak: m, shear: v, shearWeak: v, torsion: t },
  };
  return { bent, shear, capacities, most: (demand: PostDemand): number => Math.max(bent(demand), shear(demand)) };
}

/** A refused strength stands as 0: whatever acts on it is too much. */
const share = (force: number, strength: number): number => (strength === 0 ? Infinity : Math.abs(force) / strength);
