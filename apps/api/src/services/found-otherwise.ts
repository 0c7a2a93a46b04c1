import { siteItems } from "@cornerway/engine";
import { siteItemsNow, standsOtherwise, surveyDepartures, SurveyedContainer, type Scheme } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readMatters } from "../store/matter-rows.ts";
import { readSiteWords } from "./site/site-words.ts";

/** Elements of a scheme of which survey or site have found something else than it draws. It is read only where something was said. */
export async function foundOtherwise(
  db: Connection,
  projectId: string,
  readScheme: () => Promise<Scheme>,
): Promise<ReadonlySet<string>> {
  const containers = await readMatters(db, projectId, "container", SurveyedContainer);
  const words = await readSiteWords(db, projectId);
  if (containers.length + words.length === 0) return new Set();
  const scheme = await readScheme();
  const surveyed = containers.flatMap((each) => surveyDepartures(scheme, each)).map(({ elementId }) => elementId);
  const onSite = words.length === 0 ? [] : standsOtherwise(siteItemsNow(scheme, siteItems(scheme), words));
  return new Set([...surveyed, ...onSite]);
}
