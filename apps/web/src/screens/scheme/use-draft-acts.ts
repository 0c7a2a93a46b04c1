import type { Operation } from "@cornerway/schema";
import { applyOperations, type UnitSystem } from "@cornerway/schema";
import { useState } from "react";
import type { DraftStore, DrawResult } from "../../data/draft/draft-store.ts";
import { useUnits } from "../../units/use-units.ts";
import { listOf } from "../../wording/list-of.ts";
import { namesIn, type NameOf } from "../../wording/name-of.ts";
import { refusalSentence } from "../../wording/refusal-sentence.ts";

/** What was last drawn; a new object each time, so that the same words twice are two moves. */
export interface Did {
  /** Its words are fetched with the first move. */
  sentence: () => Promise<string>;
}

/** Drawing on the draft with words: what would not go and why, and what was last drawn. */
export function useDraftActs(store: DraftStore) {
  const units = useUnits();
  const [cannot, setCannot] = useState<string | null>(null);
  const [drawn, setDrawn] = useState<Did | null>(null);

  const tell = (result: DrawResult, did: Did["sentence"], operations: readonly Operation[]): boolean => {
    const nameOf = namesIn(store.getSnapshot().scheme, operations);
    setCannot(whyCannot(result, nameOf));
    if (result.ok) setDrawn({ sentence: did });
    return result.ok;
  };

  const draw = (operations: Operation[]): boolean => {
    if (operations.length === 0) return true;
    const before = store.getSnapshot().scheme;
    const applied = applyOperations(before, operations);
    const inverse = applied.ok ? applied.inverse : [];
    const did = () => inWords(operations, inverse, namesIn(before, operations), units);
    return tell(store.draw(operations), did, operations);
  };

  return {
    cannot,
    setCannot,
    drawn,
    draw,
    undo: () => tell(store.undo(), () => Promise.resolve("One move taken back."), []),
    redo: () => tell(store.redo(), () => Promise.resolve("One move drawn again."), []),
  };
}

async function inWords(
  operations: readonly Operation[],
  inverse: readonly Operation[],
  nameOf: NameOf,
  units: UnitSystem,
): Promise<string> {
  const { actSentence } = await import("../../wording/act-sentence.ts");
  return `${actSentence(operations, inverse, nameOf, units)}.`;
}

function whyCannot(result: DrawResult, nameOf: (id: string) => string): string | null {
  if (result.ok) return null;
  if ("refusal" in result) return refusalSentence(result.refusal, nameOf);
  if ("changed" in result) return `${listOf(result.changed.map(nameOf))} was changed since. The move stays.`;
  return "There is no move to take back.";
}
