import type { Mark } from "@cornerway/schema";
import { lazy, Suspense, useCallback, useState, type ReactNode } from "react";
import { Ruled } from "../controls/Ruled.tsx";
import { useKeys } from "../keys/use-keys.ts";
import type { Offer } from "../sheet/contract.ts";
import { ChosenCheck } from "./ChosenCheck.tsx";
import { checkOfMark } from "./check-of-mark.ts";
import type { CheckSource, DeflectedIn } from "./check-source.ts";

const CheckPaper = lazy(() => import("./CheckPaper.tsx"));

interface Opened {
  elementId: string;
  checkId: string | null;
}

export interface Checks {
  /** Opens the working of one check. */
  open: (elementId: string, checkId: string) => void;
  /** The way from a mark of strength to its working. */
  offerOn: (mark: Mark) => Offer | undefined;
  /** The governing check of what is chosen, for the margin. */
  slip: ReactNode;
  /** The open working, laid on the field. */
  paper: ReactNode;
}

/** Choosing a thing tells its governing check; Enter opens the working, Escape takes it away. */
export function useChecks(
  source: CheckSource | null,
  chosenId: string | null,
  { inHand = false, deflectedIn }: { inHand?: boolean; deflectedIn?: DeflectedIn } = {},
): Checks {
  const [opened, setOpened] = useState<Opened | null>(null);
  const open = useCallback((elementId: string, checkId: string) => setOpened({ elementId, checkId }), []);
  const openChosen = () => {
    if (chosenId !== null && source !== null) setOpened({ elementId: chosenId, checkId: null });
  };
  const judged = source !== null;
  const offerOn = useCallback(
    (mark: Mark): Offer | undefined => {
      const checkId = judged ? checkOfMark(mark) : null;
      const [elementId] = mark.elements;
      if (checkId === null || elementId === undefined) return undefined;
      return { label: "Open its working", onPress: () => open(elementId, checkId) };
    },
    [judged, open],
  );
  useKeys({ Enter: () => !inHand && opened === null && openChosen() });
  return {
    ...{ open, offerOn },
    slip: <ChosenCheck source={source} chosenId={chosenId} onOpen={openChosen} />,
    paper:
      opened === null || source === null ? null : (
        <Suspense fallback={<Ruled label="Laying the working out" />}>
          <CheckPaper
            source={source}
            {...opened}
            deflectedIn={deflectedIn}
            onCheck={(checkId) => setOpened({ ...opened, checkId })}
            onClose={() => setOpened(null)}
          />
        </Suspense>
      ),
  };
}
