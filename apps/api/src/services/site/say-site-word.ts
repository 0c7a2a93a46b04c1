import { siteItems } from "@cornerway/engine";
import {
  drawnDigestOf,
  lastWordOf,
  refuseSiteWord,
  siteActs,
  siteClosers,
  SiteWord,
  type NewSiteJudgement,
  type NewSiteWord,
  type SiteItem,
} from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { findPlainMatter, insertMatter, isMatterId, nextNumber } from "../../store/matter-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { refusePhotos } from "../files/refuse-photos.ts";
import { authorAs, type Part } from "../part.ts";
import { builtFrom } from "./built-from.ts";
import { readSiteWords } from "./site-words.ts";

/** Says a word on one item of the revision that is built from. Sent twice, it is one word with one answer. */
export async function saySiteWord(
  database: Database,
  sender: Part,
  body: NewSiteWord | NewSiteJudgement,
): Promise<Outcome<SiteWord>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  const act = siteActs[body.says];
  return actOf(database, sender, act, async (tx, part) => {
    const earlier = await findPlainMatter(tx, projectId, { kind: "site word", id: body.id }, SiteWord);
    if (earlier?.bodyDigest === bodyDigest) return done(earlier.matter);
    if (await isMatterId(tx, projectId, body.id)) return refuse("id-reused");
    const found = await itemOf(tx, projectId, body);
    if (!found.ok) return found;
    const { item, drawnDigest } = found.value;
    const author = authorAs(part, act, closerOf(part, item));
    const own = (await readSiteWords(tx, projectId)).filter(({ key }) => key === item.key);
    const refused = refuseSiteWord(item.kind, lastWordOf(own, drawnDigest), body.says, author);
    if (refused !== undefined) return refuse(refused.code, { detail: refused.detail });
    const unkept = "photos" in body ? await refusePhotos(tx, projectId, body.photos) : undefined;
    if (unkept !== undefined) return unkept;
    const number = await nextNumber(tx, projectId, "site word");
    const of = { number, elementId: item.elementId, drawnDigest, author };
    const wordAt = (saidAt: string): SiteWord => ({ ...body, ...of, saidAt });
    const entry = await append(tx, projectId, author, ({ at }) => ({ kind: "site word said", word: wordAt(at) }));
    const row = { kind: "site word", id: body.id, number, entry: entry.number, bodyDigest } as const;
    await insertMatter(tx, projectId, { ...row, body: wordAt(entry.at) });
    return done(wordAt(entry.at));
  });
}

/** The role that closes such an item, of those they hold; any of theirs where they hold none that does. */
const closerOf = ({ roles }: Part, { kind }: SiteItem) =>
  siteClosers(kind).find((role) => roles.includes(role)) ?? "reader";

async function itemOf(
  tx: Connection,
  projectId: string,
  { revision: letter, key }: NewSiteWord | NewSiteJudgement,
): Promise<Outcome<{ item: SiteItem; drawnDigest: string }>> {
  const from = await builtFrom(tx, projectId);
  if (from === null) return refuseField("body-invalid", "/revision", "no revision is issued or stamped to build from");
  const { revision } = from;
  if (revision.letter !== letter)
    return refuse("revision-superseded", { detail: `revision ${revision.letter} is built from` });
  const item = siteItems(revision.scheme).find((each) => each.key === key);
  const drawnDigest = item === undefined ? undefined : drawnDigestOf(revision.scheme, item.elementId);
  return item === undefined || drawnDigest === undefined
    ? refuseField("body-invalid", "/key", `revision ${letter} has no such item`)
    : done({ item, drawnDigest });
}
