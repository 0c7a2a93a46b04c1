import {
  acts,
  administratorMayDo,
  beforeConfirmation,
  may,
  mayDo,
  type Act,
  type Actor,
  type Author,
  type ProblemCode,
  type Role,
} from "@cornerway/schema";
import type { Held } from "../store/membership-rows.ts";
import type { Person } from "../store/person-rows.ts";

/**
 * Someone's part in a project: who they are and the roles they hold there. An administrator of the service who sees to
 * its people may hold none.
 */
export interface Part {
  projectId: string;
  person: Person;
  roles: readonly Role[];
  /** The visible part of the access token that acts for them; undefined when they act by hand. */
  token?: string | undefined;
}

/** Why someone who holds this in a project may not do the act; undefined when they may. */
export function partRefusal(held: Held, administrator: boolean, act: Act): ProblemCode | undefined {
  if (administrator && administratorMayDo.includes(act)) return undefined;
  if (held.roles.length === 0) return "not-found";
  if (!may(held.roles, act)) return "role-refused";
  const waits = held.awaitsConfirmation && !beforeConfirmation.includes(act);
  return waits &&
    !may(
      held.roles.filter((role) => role !== "engineer"),
      act,
    )
    ? "not-confirmed"
    : undefined;
}

export const actsOf = (held: Held, administrator: boolean): Act[] =>
  acts.filter((act) => partRefusal(held, administrator, act) === undefined);

/** The person as the author of an act, in the first of their roles that may do it. Throws when none may. */
export function authorOf(part: Part, act: Act): Author {
  const role = part.roles.find((held) => mayDo[act].includes(held));
  if (role === undefined) throw new Error(`authorOf: ${part.roles.join(", ")} may not ${act}`);
  const { id, name } = part.person;
  return { id, name, role, ...(part.token === undefined ? {} : { token: part.token }) };
}

/** The same in the role asked for where they hold it and it may do the act; otherwise in the first of theirs that may. */
export const authorAs = (part: Part, act: Act, role: Role): Author =>
  authorOf(part.roles.includes(role) && mayDo[act].includes(role) ? { ...part, roles: [role] } : part, act);

/** The same for what an administrator of the service may do as well. */
export function actorOf(part: Part, act: Act): Actor {
  if (may(part.roles, act)) return authorOf(part, act);
  if (!administratorMayDo.includes(act)) throw new Error(`actorOf: an administrator may not ${act}`);
  return { id: part.person.id, name: part.person.name, role: "administrator" };
}
