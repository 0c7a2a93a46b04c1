import { demoCostBook, type CostBook, type Mark, type Operation, type Scheme } from "@cornerway/schema";
import { lazy, Suspense, useCallback, useEffect, useRef, useState, type ReactNode } from "react";
import { laterPart } from "../controls/later-part.ts";
import { useKeys } from "../keys/use-keys.ts";
import type { Offer } from "../sheet/contract.ts";
import { namesIn } from "../wording/name-of.ts";
import { useRemedies } from "../worker/use-remedies.ts";

const RemediesSlip = lazy(async () => ({ default: (await import("./RemediesSlip.tsx")).RemediesSlip }));
/** Which marks have ways at all is known by the ways themselves; fetched beside the drawing. */
const useSettled = laterPart(() => import("./settled-kinds.ts"));

interface Asked {
  scheme: Scheme;
  /** Null for those who see no prices: the ways then stand in the order of the book for show, without figures. */
  book: CostBook | null;
  plain: boolean;
  /** Taking a way: one act. */
  take: { label: string; onTake: (operations: Operation[]) => void; asleepBecause: string | undefined };
}

export interface RemediesShown {
  /** The quiet way under a note that something may settle. */
  offerOn: (mark: Mark) => Offer | undefined;
  /** The ways, laid first in the margin. */
  slip: ReactNode;
}

/** A note opens to its ways; they are of the scheme they were looked for on, and say so once it has moved on. */
export function useRemediesSlip({ scheme, book, plain, take }: Asked): RemediesShown {
  const live = useRemedies();
  const settled = useSettled();
  const { so, ask } = live;
  const [mark, setMark] = useState<Mark | null>(null);
  const look = useCallback(
    (wanted: Mark) => {
      setMark(wanted);
      ask(scheme, wanted.id, book ?? demoCostBook);
    },
    [ask, scheme, book],
  );
  const offerOn = useCallback(
    (noted: Mark): Offer | undefined =>
      asksForMore.has(noted.verdict) && settled?.hasRemedies(noted.fact.kind) === true
        ? { label: "What would make it work", onPress: () => look(noted) }
        : undefined,
    [look, settled],
  );
  useKeys(so === null ? {} : { Escape: live.close });
  const place = useInSight(so?.markId ?? null);
  const movedOn = so !== null && so.scheme !== scheme;
  const asleepBecause = movedOn ? "The scheme has moved on since. Look again." : take.asleepBecause;
  const again = () => {
    if (mark !== null) look(mark);
  };
  const slip =
    so === null ? null : (
      <div ref={place} className="remedies-place">
        <Suspense fallback={null}>
          <RemediesSlip
            so={movedOn && so.state === "searched" ? { ...so, state: "stopped" } : so}
            name={namesIn(so.scheme)(mark?.elements[0] ?? "")}
            pricesSeen={book !== null}
            plain={plain}
            take={{ ...take, asleepBecause, onTake: (operations) => takeIt(operations, take.onTake, live.close) }}
            onStop={live.stop}
            onAgain={again}
            onClose={live.close}
          />
        </Suspense>
      </div>
    );
  return { offerOn, slip };
}

const asksForMore: ReadonlySet<Mark["verdict"]> = new Set<Mark["verdict"]>([
  "does not work",
  "needs the engineer",
  "not checked",
]);

function takeIt(operations: Operation[], onTake: (operations: Operation[]) => void, close: () => void): void {
  onTake(operations);
  close();
}

/** Brings the ways into sight when they are asked for. */
function useInSight(markId: string | null) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (markId !== null) place.current?.scrollIntoView({ block: "nearest" });
  }, [markId]);
  return place;
}
