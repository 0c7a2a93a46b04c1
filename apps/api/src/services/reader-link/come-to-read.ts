import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import type { Link } from "../../store/link-rows.ts";
import { readHeld } from "../../store/membership-rows.ts";
import { findPersonById } from "../../store/person-rows.ts";
import { countTry } from "../../store/rate-windows.ts";
import type { SignedInPerson } from "../../store/session-rows.ts";

/** Every opening is an entry of the record, so that nobody fills it: no more than this of one link. */
const mostPerHour = 60;

/** Lets someone in to read by their link, and writes down that it was opened, unless this browser reads by it already. */
export async function comeToRead(
  database: Database,
  link: Extract<Link, { kind: "reader-link" }>,
  before: SignedInPerson | undefined,
): Promise<Outcome<{ person: SignedInPerson; projectId: string }>> {
  const { projectId, personId } = link;
  const reader = await findPersonById(database.connection, personId);
  if (reader === null) return refuse("link-gone");
  const { passwordHash: _none, ...person } = reader;
  if (before?.id === personId) return done({ person, projectId });
  if ((await countTry(database.connection, `reader's link ${link.id}`, 3_600_000)) > mostPerHour)
    return refuse("too-many-tries", { detail: `a reader's link is opened no more than ${mostPerHour} times an hour` });
  return database.act(projectId, async (tx) => {
    const { roles } = await readHeld(tx, projectId, personId);
    if (!roles.includes("reader")) return refuse("link-gone");
    const { id, name } = person;
    await append(tx, projectId, { id, name, role: "reader" }, () => ({
      ...{ kind: "reader link opened", personId, name },
    }));
    return done({ person, projectId });
  });
}
