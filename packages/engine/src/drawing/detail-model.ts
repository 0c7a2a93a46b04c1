import type { Scheme } from "@cornerway/schema";
import type { Detail } from "./detail.ts";
import { jointDetails } from "./joint-details.ts";
import { openingDetails } from "./opening-details.ts";
import { padDetail } from "./pad-detail.ts";
import { postDetails } from "./post-details.ts";
import { seatDetails } from "./seat-details.ts";
import { tieDetail } from "./tie-detail.ts";

/** The details of one element, from its own data: none for an element that has no steel of its own. */
export function detailsOf(scheme: Scheme, id: string): Detail[] {
  const isIt = (each: { readonly id: string }): boolean => each.id === id;
  const post = scheme.posts.find(isIt);
  if (post !== undefined) return postDetails(scheme, post);
  const pad = scheme.pads.find(isIt);
  if (pad !== undefined) return padDetail(scheme, pad);
  const seat = scheme.seats.find(isIt);
  if (seat !== undefined) return seatDetails(scheme, seat);
  const lock = scheme.locks.find(isIt);
  if (lock !== undefined) return jointDetails(scheme, lock);
  const tie = scheme.ties.find(isIt);
  if (tie !== undefined) return tieDetail(scheme, tie);
  const opening = scheme.openings.find(isIt);
  return opening?.framed === true ? openingDetails(scheme, opening) : [];
}
