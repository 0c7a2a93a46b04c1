import type { Operation } from "@cornerway/schema";
import { useLayoutEffect, useMemo, useState } from "react";
import { laterPart } from "../controls/later-part.ts";
import type { ToolName } from "../sheet/contract.ts";
import type { HandOptions, HandState } from "./hand-state.ts";
import { pressAndDrop, type PressingAndDropping } from "./press-and-drop.ts";
import { takeAndFinish, type TakingAndFinishing } from "./take-and-finish.ts";
import { turnAndStep, type TurningAndStepping } from "./turn-and-step.ts";
import { useChosen } from "./use-chosen.ts";
import { useHeld } from "./use-held.ts";
import { useWaiting } from "./use-waiting.ts";
import { withOperations } from "./with-operations.ts";

export type { Point } from "./carried.ts";
export type { HandOptions } from "./hand-state.ts";

/** What may be asked of the hand before its acts are there. */
type Waiting = TakingAndFinishing & PressingAndDropping & TurningAndStepping;

const useActs = laterPart(() => import("./acts.ts"));

/** The hand on the paper: which tool, what is chosen, what is held, and what the paper shows meanwhile. */
export function useHand({ standing = noneStanding, lifts = false, ...options }: HandOptions) {
  const { scheme } = options;
  const [tool, setTool] = useState<ToolName | null>(null);
  const [going, setGoing] = useState<readonly string[] | null>(null);
  const holding = useHeld();
  const chosen = useChosen(scheme);
  const acts = useActs();
  const { doBy, wait, isWaiting } = useWaiting<Waiting>(acts !== null);
  const state: HandState<Waiting> = {
    ...{ ...options, standing, lifts, acts, wait, isWaiting },
    ...{ tool, setTool, chosen, holding, going, setGoing },
  };
  const taking = takeAndFinish(state);
  const hand = {
    ...{ tool, going, setGoing },
    ...handed(holding),
    ...handedChoice(chosen),
    ...useShown(state),
    ...taking,
    ...pressAndDrop(state, taking.finish),
    ...turnAndStep(state, taking),
  };
  useLayoutEffect(() => {
    doBy(hand);
  });
  return hand;
}

export type Hand = ReturnType<typeof useHand>;

/** The scheme as the paper shows it, with what is held; and what takes away what is asked about. */
function useShown({ scheme, acts, holding: { held }, going }: HandState<Waiting>) {
  // the same objects until the hand moves: the engine is asked anew of every other scheme
  const operations = useMemo(() => acts?.heldOperations(scheme, held) ?? noOperations, [acts, scheme, held]);
  const shown = useMemo(() => withOperations(scheme, operations), [scheme, operations]);
  const removal = useMemo(
    () => (going === null || acts === null ? noOperations : acts.removeElements(scheme, going)),
    [acts, scheme, going],
  );
  return { operations, shown, removal };
}

/** `lifted`: true once what is held has left its place on the paper. */
const handed = ({ held, hold, lift, lifted }: ReturnType<typeof useHeld>) => ({ held, hold, lift, lifted });

function handedChoice({ chosenId, chosenIds, choose, chooseAlso, chooseAll, focused }: ReturnType<typeof useChosen>) {
  return { chosenId, chosenIds, choose, chooseAlso, chooseAll, focused };
}

const noneStanding = () => [];

const noOperations: Operation[] = [];
