import type { FactOf, Lock } from "@cornerway/schema";
import type { Contact, UnitBearing } from "./contact.ts";

/** A lock, made connection or hold-down where it is drawn; `why` says what keeps it from serving. */
export type LockPlace = {
  readonly lock: Lock;
  /** What its fitting stands on; undefined where that is nothing. */
  readonly contact: Contact | undefined;
  readonly why: FactOf<"lock-cannot-serve">["why"] | undefined;
};

/** Every lock held against what its fitting stands on. Of two at one fitting the first, by id, is the one that serves. */
export function lockPlaces(locks: readonly Lock[], bearings: readonly UnitBearing[]): LockPlace[] {
  if (locks.length === 0) return [];
  const contacts = new Map(
    bearings.flatMap(({ contacts: own }) =>
      own.flatMap((contact) =>
        contact.fitting === undefined ? [] : [[placeOf(contact.unitId, contact.fitting), contact]],
      ),
    ),
  );
  const joined = new Set<string>();
  return locks.map((lock) => {
    const place = placeOf(lock.containerId, lock.fitting);
    const contact = contacts.get(place);
    const why = joined.has(place) ? "joined already" : refusalOf(lock.kind, contact);
    if (why === undefined) joined.add(place);
    return { lock, contact, why };
  });
}

const placeOf = (unitId: string, fitting: string): string => `${unitId} ${fitting}`;

/** What each kind needs under its fitting. */
function refusalOf(kind: Lock["kind"], contact: Contact | undefined): LockPlace["why"] {
  if (contact === undefined) return "nothing under it";
  const { target, joint } = contact;
  if (target.on === "ground") return "on bare ground";
  if (kind === "made connection") return undefined;
  if (kind === "hold-down") return target.on === "pad" ? undefined : "not on a pad";
  if (target.on !== "fitting") return "not on a fitting";
  return joint.joint === "lock" ? undefined : (joint.why ?? "gap to pack");
}

/** The bearings with every fitting that a lock holds down able to pull. */
export function heldByLocks(bearings: readonly UnitBearing[], places: readonly LockPlace[]): UnitBearing[] {
  const serving = new Map(
    places.flatMap(({ lock, why }) => (why === undefined ? [[placeOf(lock.containerId, lock.fitting), lock.id]] : [])),
  );
  if (serving.size === 0) return [...bearings];
  return bearings.map((bearing) => ({
    ...bearing,
    contacts: bearing.contacts.map((contact) => {
      const heldById =
        contact.fitting === undefined ? undefined : serving.get(placeOf(contact.unitId, contact.fitting));
      return heldById === undefined ? contact : { ...contact, heldById };
    }),
  }));
}
