import type { Lock, Operation } from "@cornerway/schema";
import type { Contact } from "../../bearing/contact.ts";
import { FreshNames } from "../fresh-names.ts";
import { bareSeats, seatOn } from "../seat-places.ts";
import type { Generator, RemedyGround, Trial } from "../trial.ts";

/**
 * What holds a unit down at its own bearings: a stock lock where it serves between fittings, else a made connection, an anchor
 * on a pad, a seat welded to the rail. First at all that could pull, and down the stack to the ground as well.
 */
export const holdDown: Generator = (ground) => {
  const [unitId] = ground.mark.elements;
  if (unitId === undefined) return [];
  const own = heldAt(ground, [unitId]);
  const down = heldAt(ground, stackUnder(ground, unitId));
  const trials = [own, down].flatMap((operations, at): Trial[] =>
    operations.length === 0 || (at === 1 && operations.length === own.length)
      ? []
      : [
          {
            change: { kind: "made connections", unitId, places: operations.length, as: kindOf(operations) },
            operations,
          },
        ],
  );
  return trials.length === 0 ? [] : [trials];
};

function kindOf(operations: readonly Operation[]): Lock["kind"] {
  const kinds = operations.flatMap((operation) => (operation.kind === "lock.set" ? [operation.lock.kind] : []));
  return kinds.length === operations.length && kinds.every((kind) => kind === kinds[0])
    ? (kinds[0] ?? "made connection")
    : "made connection";
}

/** The unit and all units it stands on, to the ground. */
function stackUnder({ analysis }: RemedyGround, unitId: string): string[] {
  const found = [unitId];
  for (const id of found)
    for (const { contacts } of analysis.bearings.filter((bearing) => bearing.unitId === id))
      for (const { target } of contacts)
        if ((target.on === "fitting" || target.on === "rail") && !found.includes(target.elementId))
          found.push(target.elementId);
  return found;
}

function heldAt({ scheme, analysis }: RemedyGround, unitIds: readonly string[]): Operation[] {
  const names = new FreshNames(scheme);
  return unitIds.flatMap((unitId) => {
    const contacts = analysis.bearings.find((bearing) => bearing.unitId === unitId)?.contacts ?? [];
    const rails = bareSeats(analysis, unitId);
    return [
      ...contacts.flatMap((contact) => heldFitting(scheme, names, contact)),
      ...rails.map((contact) => seatOn(analysis, names, contact, { lengthMm: PLATE_MM, heldDown: true })),
    ];
  });
}

/** A seat that is drawn is welded to what stands on it; a fitting on a fitting or a pad is locked or anchored to it. */
function heldFitting({ locks, seats }: RemedyGround["scheme"], names: FreshNames, contact: Contact): Operation[] {
  const { unitId, fitting, target, joint, seatId, heldById } = contact;
  const seat = seats.find(({ id }) => id === seatId);
  if (heldById !== undefined) return [];
  if (seat !== undefined) return [{ kind: "seat.change", seat: { ...seat, heldDown: true } }];
  const isTaken = locks.some((lock) => lock.containerId === unitId && lock.fitting === fitting);
  if (fitting === undefined || isTaken || target.on === "ground" || target.on === "rail") return [];
  const kind = target.on === "pad" ? "hold-down" : joint.joint === "lock" ? "lock" : "made connection";
  return [{ kind: "lock.set", lock: { ...names.next("L"), containerId: unitId, fitting, kind } }];
}

/** Length of a plate along the rail, mm; common practice, no published source. */
const PLATE_MM = 300;
