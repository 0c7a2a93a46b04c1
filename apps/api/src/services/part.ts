import { mayDo, type Act, type Author, type Role } from "@cornerway/schema";
import type { Person } from "../store/person-rows.ts";

/** Someone's part in a project: who they are and the roles they hold there. */
export interface Part {
  projectId: string;
  person: Person;
  roles: readonly Role[];
}

/** The person as the author of an act, in the first of their roles that may do it. Throws when none may. */
export function authorOf(part: Part, act: Act): Author {
  const role = part.roles.find((held) => mayDo[act].includes(held));
  if (role === undefined) throw new Error(`authorOf: ${part.roles.join(", ")} may not ${act}`);
  return { id: part.person.id, name: part.person.name, role };
}
