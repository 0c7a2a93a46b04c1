import { containerMembers } from "../catalog/sections/container-members.ts";
import { steels, type Steel } from "../catalog/materials.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { Check } from "../checks/check.ts";
import type { PostDemand, PostElement } from "../checks/corner-post.ts";
import { isoProofLoad } from "../checks/iso-proof-load.ts";
import type { MemberDemand } from "../checks/member-demand.ts";
import type { PostBounds, PostStrengths } from "../checks/post-bounds.ts";
import type { Resistance } from "../working/resistance.ts";
import { enlargement } from "./bowed-demand.ts";
import { demandsAlong } from "./demands-along.ts";
import { worseOf, type Screened, type StrengthPart } from "./strength-part.ts";

export type PostStretch = {
  readonly ownerId: string;
  readonly element: PostElement;
  readonly place: string;
  readonly clearMm: number;
  readonly beams: readonly { readonly id: string; readonly lengthMm: number }[];
};

/**
 * A corner post between its two bounds. It is screened by the lower one (alone, without its sheet); the upper one tells
 * whether the sheet could help. How its outline stands in the corner is assumed, so both ways round are tried.
 */
export function cornerPostPart(post: PostStretch, basis: CheckBasis): StrengthPart {
  const { ownerId, element, place, clearMm, beams } = post;
  const boundsAt = (steel: Steel): PostBounds =>
    element === "front corner post" ? basis.frontPost({ steel, clearMm }) : basis.doorPost({ steel, clearMm });
  const bounds = boundsAt(steels.unproved);
  const screenOne = (demand: PostDemand): Screened => {
    const lower = utilisation(bounds.lower, demand);
    return {
      limitState: lower.shear > lower.bent ? "shear" : "axial force with bending",
      utilisation: Math.max(lower.bent, lower.shear),
      upper: Math.max(...Object.values(utilisation(bounds.upper, demand))),
      checks: (steel = steels.unproved) => lowerChecks(element, demand, boundsAt(steel), basis),
    };
  };
  return {
    id: `${ownerId} ${element} ${place}`,
    ownerId,
    element,
    place,
    level: "strength",
    screen: (solved) => {
      const { memberEndForces } = solved.unit(ownerId);
      let worst: Screened | undefined;
      for (const { id, lengthMm } of beams)
        for (const demand of demandsAlong(memberEndForces[id] ?? [], lengthMm))
          for (const turned of bothWays(demand, clearMm)) worst = worseOf(worst, screenOne(turned));
      return worst;
    },
  };
}

function lowerChecks(element: PostElement, demand: PostDemand, bounds: PostBounds, basis: CheckBasis): Check[] {
  const finding = basis.cornerPost(element, demand, bounds, isoProofLoad({ edition: "1990" }));
  if ("refused" in finding)
    return [{ ok: false, element, limitState: "axial force with bending", why: finding.refused }];
  return [finding.lower];
}

/** Moments enlarged by the bow of the post alone, by its weaker axis; either axis of the model may be the outline's x. */
function bothWays(demand: MemberDemand, clearMm: number): PostDemand[] {
  const bow = enlargement(Math.max(demand.axialN, 0), leastInertiaMm4, clearMm);
  const [my, mz] = [bow * demand.momentStrongNmm, bow * demand.momentWeakNmm];
  const { axialN, torsionNmm, shearStrongN: vz, shearWeakN: vy } = demand;
  return [
    { axialN, torsionNmm, mxNmm: my, myNmm: mz, shearXN: vy, shearYN: vz },
    { axialN, torsionNmm, mxNmm: mz, myNmm: my, shearXN: vz, shearYN: vy },
  ];
}

const { ixMm4, iyMm4 } = containerMembers["front corner post"];
const leastInertiaMm4 = Math.min(ixMm4, iyMm4);

function utilisation(strengths: PostStrengths, demand: PostDemand): { bent: number; shear: number } {
  const axial = demand.axialN >= 0 ? strengths.compression : strengths.tension;
  const share = (force: number, strength: Resistance): number =>
    strength.ok ? Math.abs(force) / strength.available : Infinity;
  return {
    bent: share(demand.axialN, axial) + share(demand.mxNmm, strengths.mx) + share(demand.myNmm, strengths.my),
    shear:
      share(demand.shearXN, strengths.shearX) +
      share(demand.shearYN, strengths.shearY) +
      share(demand.torsionNmm, strengths.torsion),
  };
}
