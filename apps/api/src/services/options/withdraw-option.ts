import type { NewWithdrawal, OptionWithdrawal } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { findOptionSet, findWithdrawal, insertWithdrawal, type KeptSet } from "../../store/option-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";

/**
 * Takes an alternative back. Only whoever kept it does; it keeps its place, its drawing and its answer, and is picked no
 * more. What is picked is not taken back: another is picked first.
 */
export function withdrawOption(
  database: Database,
  sender: Part,
  { setId, optionId, ...body }: NewWithdrawal & { setId: string; optionId: string },
): Promise<Outcome<OptionWithdrawal>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, { setId, optionId, ...body });
  return actOf(database, sender, "keep-options", async (tx, part) => {
    const earlier = await findWithdrawal(tx, projectId, body.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(earlier.withdrawal) : refuse("id-reused");
    const found = await findOptionSet(tx, projectId, setId);
    const option = found?.set.options.find(({ id }) => id === optionId);
    if (found === null || option === undefined) return refuse("not-found");
    const detail = whyNotWithdrawn(found.set, option, part.person.id);
    if (detail !== undefined) return refuse("step-refused", { detail });
    const author = authorOf(part, "keep-options");
    const { place, name } = option;
    const withdrawalAt = (at: string): OptionWithdrawal => ({ ...body, author, withdrawnAt: at });
    const { at } = await append(tx, projectId, author, (entry) => ({
      kind: "option withdrawn",
      ...{ setId, setNumber: found.set.number, optionId, place, name, withdrawal: withdrawalAt(entry.at) },
    }));
    await insertWithdrawal(tx, projectId, { ...withdrawalAt(at), optionId, bodyDigest });
    return done(withdrawalAt(at));
  });
}

function whyNotWithdrawn(
  { picks }: KeptSet,
  { id, place, name, author, withdrawn }: KeptSet["options"][number],
  personId: string,
): string | undefined {
  const which = `alternative ${place}, ${name},`;
  if (withdrawn !== null) return `${which} is withdrawn already`;
  if (author.id !== personId) return `${which} was kept by ${author.name}, and only they withdraw it`;
  if (picks.at(-1)?.optionId === id) return `${which} is the one that is picked; pick another first`;
  return undefined;
}
