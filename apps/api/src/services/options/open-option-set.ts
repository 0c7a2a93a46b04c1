import type { NewOptionSet, OptionSetOpened } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { findOptionSet, insertOptionSet, nextSetNumber } from "../../store/option-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";

/** Says what is to be chosen between; its alternatives are kept one by one. */
export function openOptionSet(database: Database, sender: Part, body: NewOptionSet): Promise<Outcome<OptionSetOpened>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "keep-options", async (tx, part) => {
    const earlier = await findOptionSet(tx, projectId, body.id);
    if (earlier !== null && earlier.bodyDigest !== bodyDigest) return refuse("id-reused");
    if (earlier !== null) {
      const { id, number, name, author, openedAt } = earlier.set;
      return done({ id, number, name, author, openedAt });
    }
    const author = authorOf(part, "keep-options");
    const number = await nextSetNumber(tx, projectId);
    const { id, name } = body;
    const { at } = await append(tx, projectId, author, () => ({ kind: "option set opened", setId: id, number, name }));
    await insertOptionSet(tx, projectId, { id, number, name, author, openedAt: at, bodyDigest });
    return done({ id, number, name, author, openedAt: at });
  });
}
