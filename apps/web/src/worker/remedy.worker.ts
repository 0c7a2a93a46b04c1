import { hazardRefusalText, remedySearch } from "@cornerway/engine";
import { applyOperations } from "@cornerway/schema";
import type { Operation, Scheme } from "@cornerway/schema";
import type { RemedyQuestion, RemedyWord } from "./remedy-messages.ts";

const tell = (word: RemedyWord) => postMessage(word);

/** What is known of a scheme is kept for its next mark. */
const searchOf = remedySearch(draw);

/** The search for remedies on a thread of its own: each option is told as it is found. */
addEventListener("message", ({ data: { turn, scheme, markId, book, known } }: MessageEvent<RemedyQuestion>) => {
  try {
    const search = searchOf(scheme, markId, book, known);
    for (;;) {
      const next = search.next();
      if (next.done !== true) tell({ kind: "step", turn, step: next.value });
      else if (next.value.accepted) return tell({ kind: "listed", turn, list: next.value.list });
      else return tell({ kind: "broke", turn, why: next.value.refusals.map(hazardRefusalText).join(" ") });
    }
  } catch (error) {
    tell({ kind: "broke", turn, why: error instanceof Error ? error.message : String(error) });
  }
});

function draw(scheme: Scheme, operations: readonly Operation[]): Scheme | undefined {
  const applied = applyOperations(scheme, [...operations]);
  return applied.ok ? applied.scheme : undefined;
}
