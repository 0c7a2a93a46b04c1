import { siteItems } from "@cornerway/engine";
import { builtState, mayReadEntry, siteItemsNow, type SiteNow } from "@cornerway/schema";
import type { Connection } from "../../store/connection.ts";
import type { Part } from "../part.ts";
import { builtFrom } from "./built-from.ts";
import { readSiteWords } from "./site-words.ts";

/** What is built from the newest revision that may be built from, item by item; nothing for whoever may not see it. */
export async function readSite(
  db: Connection,
  { projectId, roles }: Pick<Part, "projectId" | "roles">,
): Promise<SiteNow> {
  const from = mayReadEntry(roles, "site word said") ? await builtFrom(db, projectId) : null;
  if (from === null) return { revision: null, by: null, built: "nothing to build from", items: [] };
  const { letter, scheme } = from.revision;
  const items = siteItemsNow(scheme, siteItems(scheme), await readSiteWords(db, projectId));
  return { revision: letter, by: from.by, built: builtState(items), items };
}
