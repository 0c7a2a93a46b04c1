import type { ChangeRequest, Project, ProjectSummary, RevisionSummary } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readEngineers, readHeld, type Held } from "../store/membership-rows.ts";
import { readMembers, readProjectIds, readProjectRow } from "../store/project-rows.ts";
import { readRequests } from "../store/request-rows.ts";
import { readRevisionHeads, summaryOf } from "../store/revision-rows.ts";
import { pageOf, type Page } from "./page.ts";
import type { Part } from "./part.ts";
import { pricedRequests } from "./priced-requests.ts";
import { readDecisions } from "./read-decisions.ts";
import { whoseTurn, type Prices } from "./whose-turn.ts";

/** The projects someone has a part in, by name; they never learn of others. Null when there is none to come after. */
export async function readProjects(
  db: Connection,
  personId: string,
  { after, limit }: { after?: string | undefined; limit: number },
): Promise<Page<ProjectSummary> | null> {
  const ids = await readProjectIds(db, personId, { after, limit: limit + 1 });
  if (ids === null) return null;
  const { items, next } = pageOf(ids, limit, (id) => id);
  return {
    items: await Promise.all(items.map(async (id) => readSummary(db, id, await readHeld(db, id, personId)))),
    next,
  };
}

export async function readProject(db: Connection, { projectId, person }: Part): Promise<Project> {
  const held = await readHeld(db, projectId, person.id);
  return { ...(await readSummary(db, projectId, held)), members: await readMembers(db, projectId) };
}

async function readSummary(db: Connection, id: string, held: Held): Promise<ProjectSummary> {
  const { openedAt, ...project } = await readProjectRow(db, id);
  const [head] = await readRevisionHeads(db, id);
  const engineers = await readEngineers(db, id);
  const latest = head === undefined ? undefined : await summaryOf(db, id, head);
  const requests = await readRequests(db, id);
  return {
    ...project,
    roles: held.roles,
    awaitsConfirmation: held.awaitsConfirmation,
    engineerToConfirm: engineers.waitingSince !== null,
    revision: latest?.letter ?? null,
    verdict: latest?.verdict ?? "not checked",
    stamp: latest?.stamp ?? null,
    ...whoseTurn(openedAt.toISOString(), latest, requests, engineers, await readPrices(db, id, requests, latest)),
    containers: head?.containerCount ?? 0,
  };
}

async function readPrices(
  db: Connection,
  id: string,
  requests: readonly ChangeRequest[],
  latest: RevisionSummary | undefined,
): Promise<Prices> {
  const open = requests.filter(({ state, revision }) => state === "open" && revision === latest?.letter);
  return { decisions: await readDecisions(db, id), priced: await pricedRequests(db, id, open) };
}
