import { Confirmation, type NewConfirmation } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { findPlainMatter, insertMatter, isMatterId, nextNumber } from "../../store/matter-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";

/** A named engineer says that values from memory were held against the published text, and which. */
export async function confirmValues(
  database: Database,
  sender: Part,
  body: NewConfirmation,
): Promise<Outcome<Confirmation>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "confirm-value", async (tx, part) => {
    const earlier = await findPlainMatter(tx, projectId, { kind: "confirmation", id: body.id }, Confirmation);
    if (earlier?.bodyDigest === bodyDigest) return done(earlier.matter);
    if (await isMatterId(tx, projectId, body.id)) return refuse("id-reused");
    const author = authorOf(part, "confirm-value");
    const number = await nextNumber(tx, projectId, "confirmation");
    const at = (confirmedAt: string): Confirmation => ({ ...body, number, author, confirmedAt });
    const entry = await append(tx, projectId, author, (place) => ({
      kind: "values confirmed",
      confirmation: at(place.at),
    }));
    const row = { kind: "confirmation", id: body.id, number, entry: entry.number, bodyDigest } as const;
    await insertMatter(tx, projectId, { ...row, body: at(entry.at) });
    return done(at(entry.at));
  });
}
