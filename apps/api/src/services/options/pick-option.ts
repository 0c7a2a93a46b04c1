import type { NewPick, OptionPick } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { findOptionSet, findPick, insertPick } from "../../store/option-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";

/**
 * Says which alternative is to be built. The last word counts; each stays, as do the alternatives that were not picked.
 * Nothing is drawn by it: the architect makes the draft that drawing in an act of their own.
 */
export function pickOption(
  database: Database,
  sender: Part,
  { setId, ...body }: NewPick & { setId: string },
): Promise<Outcome<OptionPick>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, { setId, ...body });
  return actOf(database, sender, "pick-option", async (tx, part) => {
    const earlier = await findPick(tx, projectId, body.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(earlier.pick) : refuse("id-reused");
    const found = await findOptionSet(tx, projectId, setId);
    if (found === null) return refuse("not-found");
    const option = found.set.options.find(({ id }) => id === body.optionId);
    if (option === undefined) return refuseField("body-invalid", "/optionId", "the set has no such alternative");
    if (option.withdrawn !== null)
      return refuse("step-refused", { detail: `alternative ${option.place}, ${option.name}, is withdrawn` });
    if (option.contentDigest !== body.contentDigest)
      return refuseField("digest-mismatch", "/contentDigest", "not that alternative's");
    if (found.set.picks.at(-1)?.optionId === option.id)
      return refuse("step-refused", { detail: `alternative ${option.place}, ${option.name}, is picked already` });
    const author = authorOf(part, "pick-option");
    const pickAt = (at: string): OptionPick => ({ ...body, author, pickedAt: at });
    const entry = await append(tx, projectId, author, ({ at }) => ({
      kind: "option picked",
      ...{ setId, setNumber: found.set.number, place: option.place, name: option.name, pick: pickAt(at) },
    }));
    await insertPick(tx, projectId, { ...pickAt(entry.at), setId, entry: entry.number, bodyDigest });
    return done(pickAt(entry.at));
  });
}
