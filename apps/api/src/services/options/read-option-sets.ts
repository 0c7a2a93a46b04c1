import {
  standsApart,
  type OptionDrawn,
  type OptionNow,
  type OptionSetNow,
  type ProjectCostBook,
} from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import type { Connection } from "../../store/connection.ts";
import { readCostBook } from "../../store/cost-book-rows.ts";
import { findOption, readOptionSets, type FoundOption, type KeptSet } from "../../store/option-rows.ts";
import { premiumOf } from "../premium-of.ts";

/** Every set of a project, each alternative with its answer and what it costs by the cost book as it is now. */
export async function readOptionSetsNow(db: Connection, projectId: string): Promise<OptionSetNow[]> {
  const costBook = await readCostBook(db, projectId);
  const sets = await readOptionSets(db, projectId);
  return Promise.all(sets.map((set) => setNow(db, { projectId, set, costBook })));
}

async function setNow(
  db: Connection,
  { projectId, set, costBook }: { projectId: string; set: KeptSet; costBook: ProjectCostBook },
): Promise<OptionSetNow> {
  const options: OptionNow[] = [];
  for (const { id } of set.options) {
    const found = await findOption(db, { projectId, optionId: id });
    if (found !== null) options.push(await optionNow(found, costBook));
  }
  return { ...set, options };
}

export async function readOptionDrawn(
  db: Connection,
  projectId: string,
  { setId, optionId }: { setId: string; optionId: string },
): Promise<Outcome<OptionDrawn>> {
  const found = await findOption(db, { projectId, optionId });
  if (found?.setId !== setId) return refuse("not-found");
  return done({ id: optionId, contentDigest: found.option.contentDigest, scheme: found.scheme });
}

async function optionNow(
  { option, withdrawn, scheme, answer, result }: FoundOption,
  costBook: ProjectCostBook,
): Promise<OptionNow> {
  const { contentDigest } = option;
  const assessed =
    result === null || answer.state !== "done" ? null : { marks: result.marks, resultDigest: answer.resultDigest };
  const premium = await premiumOf({ scheme, contentDigest }, costBook, assessed);
  const { total, currency, forShow, lines } = premium;
  const steelKg = lines.reduce((sum, { item, quantity }) => (item === "steel" ? sum + quantity : sum), 0);
  return {
    ...option,
    withdrawn,
    answer,
    price: { total, currency, forShow, standsApart: standsApart(premium), steelKg },
  };
}
