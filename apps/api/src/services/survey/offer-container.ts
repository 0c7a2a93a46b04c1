import { SurveyedContainer, type NewSurveyedContainer, type SurveyedContainerNow } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { findMatter, insertMatter, isMatterId, nextNumber, readMatters } from "../../store/matter-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";
import { surveyedNow } from "./read-survey.ts";

/** Offers a container for the building, by its number; each number once in a project. */
export async function offerContainer(
  database: Database,
  sender: Part,
  body: NewSurveyedContainer,
): Promise<Outcome<SurveyedContainerNow>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "survey-container", async (tx, part) => {
    const earlier = await findMatter(tx, projectId, { kind: "container", id: body.id }, SurveyedContainer);
    if (earlier?.bodyDigest === bodyDigest) return done(await surveyedNow(tx, projectId, earlier.matter));
    if (await isMatterId(tx, projectId, body.id)) return refuse("id-reused");
    const { containerNumber } = body;
    const known = await readMatters(tx, projectId, "container", SurveyedContainer);
    if (known.some((each) => each.containerNumber === containerNumber))
      return refuseField("body-invalid", "/containerNumber", `${containerNumber} is offered already`);
    const author = authorOf(part, "survey-container");
    const number = await nextNumber(tx, projectId, "container");
    const offered = (offeredAt: string) => ({ ...body, number, author, offeredAt });
    const entry = await append(tx, projectId, author, ({ at }) => ({
      kind: "container offered",
      container: offered(at),
    }));
    const row = { kind: "container", id: body.id, number, entry: entry.number, bodyDigest } as const;
    await insertMatter(tx, projectId, { ...row, body: offered(entry.at) });
    return done(await surveyedNow(tx, projectId, { ...offered(entry.at), steps: [] }));
  });
}
