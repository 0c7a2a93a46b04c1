import { containerMembers } from "../catalog/sections/container-members.ts";
import { doorPost, type DoorPostSection } from "../catalog/sections/door-post.ts";
import type { Steel } from "../catalog/materials.ts";
import type { ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { pressedTension } from "../codes/cold-formed/pressed-tension.ts";
import type { Resistance } from "../working/resistance.ts";
import { doorPostBending } from "./door-post-bending.ts";
import { doorPostAlone, doorPostHeld } from "./door-post-strength.ts";
import { frontPostAlone, frontPostHeld, type FrontPost } from "./front-post.ts";
import { doorPostShear, frontPostShear, type PostShear } from "./post-shear.ts";
import { frontPostBendingAlone, frontPostBendingHeld } from "./front-post-bending.ts";

/** What a post can bear: axial force, bending about and shear along the axes of its drawn outline, torsion. */
export type PostStrengths = PostShear & {
  readonly compression: Resistance;
  readonly tension: Resistance;
  readonly mx: Resistance;
  readonly my: Resistance;
};

/** A post alone, and held along its length by whole sheet. Where the sheet beside a post is cut, only `lower` stands. */
export type PostBounds = { readonly lower: PostStrengths; readonly upper: PostStrengths };

/** Bounds of the lipped front corner post. */
export function frontPostBounds(post: FrontPost, basis: ColdFormedBasis): PostBounds {
  const tension = pressedTension(
    { section: post.section ?? containerMembers["front corner post"], steel: post.steel },
    basis,
  );
  const shear = frontPostShear(post, basis);
  const alone = frontPostBendingAlone(post, basis);
  return {
    lower: { ...shear, compression: frontPostAlone(post, basis), tension, mx: alone, my: alone },
    upper: {
      ...shear,
      compression: frontPostHeld(post, basis),
      tension,
      mx: frontPostBendingHeld(post, "x", basis),
      my: frontPostBendingHeld(post, "y", basis),
    },
  };
}

/** Bounds of the closed door corner post: alone, and with its length held. */
export function doorPostBounds(
  post: { readonly steel: Steel; readonly clearMm: number; readonly section?: DoorPostSection },
  basis: ColdFormedBasis,
): PostBounds {
  const shared = {
    ...doorPostShear(post, basis),
    tension: pressedTension({ section: post.section ?? doorPost, steel: post.steel }, basis),
    mx: doorPostBending(post, "x", basis),
    my: doorPostBending(post, "y", basis),
  };
  return {
    lower: { ...shared, compression: doorPostAlone(post, basis) },
    upper: { ...shared, compression: doorPostHeld(post, basis) },
  };
}
