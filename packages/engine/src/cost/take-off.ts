import type { Scheme } from "@cornerway/schema";
import { beamTakeOff, postTakeOff } from "./bar-take-off.ts";
import { containerTakeOff } from "./container-take-off.ts";
import { lockTakeOff, seatTakeOff, tieTakeOff } from "./joint-take-off.ts";
import { openingTakeOff } from "./opening-take-off.ts";
import { padTakeOff } from "./pad-take-off.ts";
import type { TakenOff } from "./take-off-line.ts";

/**
 * Everything a scheme needs beyond the elements it shares with the plain stack: metres of cut and weld, kilograms by
 * section, pieces and lifts.
 */
export function takeOff(scheme: Scheme, plain: ReadonlySet<string>): TakenOff {
  const each = [
    ...scheme.containers.map(containerTakeOff),
    ...scheme.openings.map(openingTakeOff),
    ...scheme.posts.map(postTakeOff),
    ...scheme.beams.map(beamTakeOff),
    ...scheme.seats.map(seatTakeOff),
    ...scheme.ties.map(tieTakeOff),
    ...scheme.locks.filter(({ id }) => !plain.has(id)).map(lockTakeOff),
    ...scheme.pads.map((pad) => padTakeOff(pad, plain.has(pad.id))),
  ];
  return { lines: each.flatMap(({ lines }) => lines), notKnown: each.flatMap(({ notKnown }) => notKnown) };
}
