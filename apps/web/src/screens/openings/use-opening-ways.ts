import { verdicts, type Mark, type Operation, type Scheme } from "@cornerway/schema";
import type { ReactNode } from "react";
import { useCostBook } from "../../data/cost-book.ts";
import { useRemediesSlip } from "../../remedies/use-remedies-slip.tsx";
import { useRoom } from "../../room/room-context.ts";
import type { Offer } from "../../sheet/contract.ts";
import { useAssessment } from "../../worker/use-assessment.ts";

export type OpeningWays = {
  /** Absent where nobody draws, or nothing on the opening asks for more. */
  readonly offer: Offer | undefined;
  readonly slip: ReactNode;
};

type Drawing = {
  /** Draws all of a way as one act; absent where nobody draws. */
  readonly onTake: ((operations: Operation[]) => void) | undefined;
  readonly asleepBecause: string | undefined;
};

/** What would make an opening work: the ways to settle the mark that stands worst on it, found as on sheet 1. */
export function useOpeningWays(
  scheme: Scheme,
  openingId: string | null,
  { onTake, asleepBecause }: Drawing,
): OpeningWays {
  const { project } = useRoom();
  const book = useCostBook(project).data?.book ?? null;
  const { assessed } = useAssessment(scheme);
  const ways = useRemediesSlip({
    ...{ scheme, book, plain: false },
    take: { label: "Draw it so", onTake: onTake ?? nothing, asleepBecause },
  });
  const marks = assessed?.scheme === scheme ? (assessed.assessment?.marks ?? []) : [];
  const offers = worstFirst(marks.filter(({ elements }) => elements[0] === openingId)).map(ways.offerOn);
  return { offer: onTake && offers.find((offer) => offer !== undefined), slip: ways.slip };
}

const worstFirst = (marks: readonly Mark[]): readonly Mark[] =>
  marks.toSorted((a, b) => verdicts.indexOf(b.verdict) - verdicts.indexOf(a.verdict));

/** Never asked: without somebody who draws no way is offered. */
const nothing = (): void => undefined;
