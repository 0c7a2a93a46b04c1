import { administratorMayDo, type Act } from "@cornerway/schema";
import { refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { readHeld } from "../store/membership-rows.ts";
import { findPersonById } from "../store/person-rows.ts";
import { partRefusal, type Part } from "./part.ts";

/**
 * What someone does in a project, with the part they hold once its row is locked: an act may wait there for others, and
 * one of those may take the part away.
 */
export const actOf = <T>(
  database: Database,
  part: Part,
  act: Act,
  work: (tx: Connection, part: Part) => Promise<Outcome<T>>,
): Promise<Outcome<T>> =>
  database.act(part.projectId, async (tx) => {
    const held = await readHeld(tx, part.projectId, part.person.id);
    const code = partRefusal(held, await actsAsAdministrator(tx, part, act), act);
    return code === undefined ? work(tx, { ...part, roles: held.roles }) : refuse(code);
  });

/** A token never acts as an administrator. */
const actsAsAdministrator = async (tx: Connection, { person, token }: Part, act: Act): Promise<boolean> =>
  token === undefined &&
  administratorMayDo.includes(act) &&
  (await findPersonById(tx, person.id))?.administrator === true;
