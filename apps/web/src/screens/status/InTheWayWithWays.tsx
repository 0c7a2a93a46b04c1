import type { ChangeRequest, Project, Revision } from "@cornerway/schema";
import { useCostBook } from "../../data/cost-book.ts";
import { useRemediesSlip } from "../../remedies/use-remedies-slip.tsx";
import { InTheWay } from "./InTheWay.tsx";
import type { Hindrance } from "./hindrances.ts";

/** What stands in the way, each with the ways that would settle it: what is done and what it costs, in plain words. */
export function InTheWayWithWays({
  project,
  revision,
  inTheWay,
  requests,
}: {
  project: Project;
  revision: Revision;
  inTheWay: readonly Hindrance[];
  requests: readonly ChangeRequest[];
}) {
  const ways = useRemediesSlip({
    ...{ scheme: revision.scheme, book: useCostBook(project).data?.book ?? null, plain: true },
    take: {
      label: "Draw it so",
      onTake: () => undefined,
      asleepBecause: "The architect draws it, or the engineer asks for it. Write to them on the review sheet.",
    },
  });
  return (
    <>
      {ways.slip}
      <InTheWay sent inTheWay={inTheWay} requests={requests} offerOn={ways.offerOn} />
    </>
  );
}
