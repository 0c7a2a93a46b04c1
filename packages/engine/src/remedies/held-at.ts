import type { Lock, Operation, Scheme } from "@cornerway/schema";
import type { Contact } from "../bearing/contact.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { FreshNames } from "./fresh-names.ts";
import { bareSeats, seatOn } from "./seat-places.ts";

/** What holds units down where they bear and nothing does yet: locks, made connections, anchors, welded seats. */
export const heldAt = (
  scheme: Scheme,
  analysis: Analysis,
  names: FreshNames,
  unitIds: readonly string[],
): Operation[] =>
  unitIds.flatMap((unitId) => {
    const contacts = analysis.bearings.find((bearing) => bearing.unitId === unitId)?.contacts ?? [];
    const rails = bareSeats(analysis, unitId);
    return [
      ...contacts.flatMap((contact) => heldFitting(scheme, names, contact)),
      ...rails.map((contact) => seatOn(analysis, names, contact, { lengthMm: PLATE_MM, heldDown: true })),
    ];
  });

/** What they are told as: one kind of lock, or made connections where they are of several. */
export function kindOfHolds(operations: readonly Operation[]): Lock["kind"] {
  const kinds = operations.flatMap((operation) => (operation.kind === "lock.set" ? [operation.lock.kind] : []));
  return kinds.length === operations.length && kinds.every((kind) => kind === kinds[0])
    ? (kinds[0] ?? "made connection")
    : "made connection";
}

/** A seat that is drawn is welded to what stands on it; a fitting on a fitting or a pad is locked or anchored to it. */
function heldFitting({ locks, seats }: Scheme, names: FreshNames, contact: Contact): Operation[] {
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
