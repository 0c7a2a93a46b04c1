import { whyFull, type KeptOption, type NewOption } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { addOption } from "../../queue/add-option.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { readDraft, type DraftRow } from "../../store/draft-rows.ts";
import { findOption, findOptionDigest, findOptionSet, insertOption, type KeptSet } from "../../store/option-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";

/**
 * Keeps the draft as the next alternative of a set, when what is on the architect's screen is what is here. The engine's
 * answer to it is put in the queue.
 */
export function keepOption(
  database: Database,
  sender: Part,
  { setId, ...body }: NewOption & { setId: string },
): Promise<Outcome<KeptOption>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, { setId, ...body });
  return actOf(database, sender, "keep-options", async (tx, part) => {
    const earlier = await findOptionDigest(tx, projectId, body.id);
    if (earlier !== null && earlier !== bodyDigest) return refuse("id-reused");
    if (earlier !== null) {
      const found = await findOption(tx, { projectId, optionId: body.id });
      return found === null ? refuse("not-found") : done(found.option);
    }
    const found = await findOptionSet(tx, projectId, setId);
    if (found === null) return refuse("not-found");
    const draft = await readDraft(tx, projectId);
    const refused = refusalOf(body, draft, found.set);
    if (refused !== undefined) return refused;
    const { scheme, contentDigest } = draft;
    const author = authorOf(part, "keep-options");
    const place = found.set.options.length + 1;
    const unsigned = {
      id: body.id,
      place,
      name: body.name,
      contentDigest,
      containers: scheme.containers.length,
      author,
    };
    const { at } = await append(tx, projectId, author, (entry) => ({
      kind: "option kept",
      ...{ setId, setNumber: found.set.number, option: { ...unsigned, keptAt: entry.at } },
    }));
    await insertOption(tx, projectId, { ...unsigned, keptAt: at, setId, scheme, bodyDigest });
    await addOption(tx, { projectId, optionId: body.id });
    return done({ ...unsigned, keptAt: at });
  });
}

function refusalOf(body: NewOption, draft: DraftRow, { options }: KeptSet): Outcome<never> | undefined {
  if (body.draftNumber > draft.number) return refuse("draft-base-ahead", { detail: `the draft is at ${draft.number}` });
  if (body.contentDigest !== draft.contentDigest)
    return refuseField("digest-mismatch", "/contentDigest", "the draft is another one now");
  if (draft.scheme.containers.length === 0) return refuse("nothing-drawn");
  const same = options.find((each) => each.withdrawn === null && each.contentDigest === draft.contentDigest);
  if (same !== undefined)
    return refuse("step-refused", { detail: `alternative ${same.place}, ${same.name}, is this very drawing` });
  const detail = whyFull(options);
  return detail === undefined ? undefined : refuse("step-refused", { detail });
}
