import { hazardRefusalText, remedySearchShared } from "@cornerway/engine";
import { applyOperations } from "@cornerway/schema";
import type { Operation, Scheme } from "@cornerway/schema";
import type { RemedyQuestion, RemedyWord } from "./remedy-messages.ts";
import { startHelpers } from "./start-helpers.ts";
import { WithHelpers } from "./with-helpers.ts";

const tell = (word: RemedyWord) => postMessage(word);

/** What is known of a scheme is kept for its next mark. */
const searchOf = remedySearchShared(draw);
/** One is enough: it looks at a change while this thread looks at another, and takes its share of full runs. */
const helped = new WithHelpers(() => startHelpers(1));

/** The search for remedies on a thread of its own: each option is told as it is found. */
addEventListener("message", ({ data }: MessageEvent<RemedyQuestion>) => void search(data));

async function search({ turn, ...asked }: RemedyQuestion): Promise<void> {
  try {
    const answer = await helped.run(asked.scheme, (helping) =>
      searchOf({ ...asked, helping }, (step) => tell({ kind: "step", turn, step })),
    );
    if (answer.accepted) tell({ kind: "listed", turn, list: answer.list });
    else tell({ kind: "broke", turn, why: answer.refusals.map(hazardRefusalText).join(" ") });
  } catch (error) {
    tell({ kind: "broke", turn, why: error instanceof Error ? error.message : String(error) });
  }
}

function draw(scheme: Scheme, operations: readonly Operation[]): Scheme | undefined {
  const applied = applyOperations(scheme, [...operations]);
  return applied.ok ? applied.scheme : undefined;
}
