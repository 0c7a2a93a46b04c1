import type { Scheme } from "@cornerway/schema";

/**
 * How many questions of geometry and statics are asked of a scheme. For each container: does it share a place with
 * another, where do its four corners bear, how does each joint serve, is it level, does it tip, is it free to move, has
 * it a way to the ground. For each opening: is it on its face, clear of four protected members, clear of other
 * openings, does the wall keep its half and its piers, does a load come down over it. For each post: its foot, its
 * head, what it stands in. For each pad: what stands on it. And whether all loads arrive.
 */
export const questionsOf = ({ containers, openings, posts, pads }: Scheme): number =>
  containers.length * 13 + openings.length * 9 + posts.length * 4 + pads.length + 1;
