import {
  answeredMarks,
  dispositions,
  foundOn,
  gravestOf,
  gravity,
  resultOn,
  stampRefusals,
  stampRefusalSentence,
  type Disposition,
  type Revision,
  type SealHindrance,
} from "@cornerway/schema";
import { useConditions } from "../../../data/condition.ts";
import { useSeal } from "../../../data/seal.ts";
import { useStamps } from "../../../data/stamp.ts";
import { useThread } from "../../../data/thread.ts";
import { useRoom } from "../../../room/room-context.ts";

/** Why a disposition is not open on an item or on the whole: all of what stands in its way. */
export function useStampAsleep(
  { result, scheme, letter }: Revision,
  elementId: string | null,
): Partial<Record<Disposition, string>> {
  const { project } = useRoom();
  const thread = useThread(project.id).data;
  const conditions = useConditions(project.id).data;
  const stamps = useStamps(project.id).data;
  const hindrances = useSeal(project.id).data?.hindrances ?? [];
  if (result === null || thread === undefined || conditions === undefined || stamps === undefined)
    return Object.fromEntries(dispositions.map((each) => [each, "Not checked yet."]));
  const on = {
    result: resultOn(result, scheme, elementId ?? undefined),
    answered: answeredMarks(thread.notes, letter),
    openRequests: thread.requests.filter(({ state }) => state === "open").length,
    openConditions: conditions.filter(({ state }) => state !== "closed").length,
    found: foundOn(foundOtherwiseIn(hindrances), scheme, elementId ?? undefined),
  };
  const items = stamps.map(({ stamp }) => stamp).filter(({ revision }) => revision === letter);
  const gravest = elementId === null ? gravestOf(items) : undefined;
  const whyNot = (each: Disposition): string[] => [
    ...(gravest !== undefined && gravity(each) < gravity(gravest) ? [`An item of it is stamped ${gravest}.`] : []),
    ...stampRefusals(each, on).map(stampRefusalSentence),
  ];
  const refused = dispositions.map((each) => [each, whyNot(each)] as const).filter(([, why]) => why.length > 0);
  return Object.fromEntries(refused.map(([each, why]) => [each, why.join(" ")]));
}

/** What survey or site have found otherwise, as the way to the seal tells it. */
const foundOtherwiseIn = (hindrances: readonly SealHindrance[]): string[] =>
  hindrances.flatMap((each) => (each.why === "found otherwise" ? [each.elementId] : []));
