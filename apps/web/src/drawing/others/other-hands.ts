import type { PersonId, Pointer, Presence, Role } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";

/** Someone else at the same sheet: what they have chosen, where they point. */
export interface OtherHand {
  key: string;
  name: string;
  role: Role;
  selected: string | null;
  pointer: Pointer | null;
}

interface Here {
  connection: string;
  personId: PersonId;
  name: string;
  role: Role;
  presence: Presence | null;
}

/** Those who have this sheet open besides me, who hold or point at something. */
export const otherHands = (here: readonly Here[], meId: PersonId, sheet: number): OtherHand[] =>
  here.flatMap(({ connection, personId, name, role, presence }) => {
    if (personId === meId || presence?.sheet !== sheet) return [];
    const { selected, pointer = null } = presence;
    return selected === null && pointer === null ? [] : [{ key: connection, name, role, selected, pointer }];
  });

/** The same as they come, go and point; `now` gives the same list until something of it changes. */
export interface OtherHands {
  listen: (listener: () => void) => () => void;
  now: () => readonly OtherHand[];
}

export function handsAt(
  here: { listen: OtherHands["listen"]; now: () => readonly Here[] },
  meId: PersonId,
  sheet: number,
): OtherHands {
  let last = here.now();
  let hands = otherHands(last, meId, sheet);
  const now = () => {
    if (here.now() !== last) {
      last = here.now();
      hands = otherHands(last, meId, sheet);
    }
    return hands;
  };
  return { listen: here.listen, now };
}

/** Each draws in the pencil they write with. */
export const pencilOf: Readonly<Record<Role, string>> = {
  architect: ink.graphite,
  engineer: ink.mulberry,
  checker: ink.mulberry,
  owner: ink.ochre,
  reader: ink.graphite,
};
