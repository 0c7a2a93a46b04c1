import { SiteWord } from "@cornerway/schema";
import type { Connection } from "../../store/connection.ts";
import { readPlainMatters } from "../../store/matter-rows.ts";

/** Everything said on site, the earliest first. */
export const readSiteWords = (db: Connection, projectId: string): Promise<SiteWord[]> =>
  readPlainMatters(db, projectId, "site word", SiteWord);
