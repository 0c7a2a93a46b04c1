import { assessStrength, strengthWhileDrawing } from "@cornerway/engine";
import type { CheckWorking, Scheme } from "@cornerway/schema";
import type { StrengthQuestion, StrengthWord } from "./strength-messages.ts";

const drawing = strengthWhileDrawing();
let judgedBefore = false;
let workings: ReadonlyMap<string, CheckWorking> = new Map();

const tell = (word: StrengthWord) => postMessage(word);

/** The strength run on a thread of its own: it is ended from outside when the scheme changes under it. */
addEventListener("message", ({ data }: MessageEvent<StrengthQuestion>) => {
  if (data.kind === "working") tell({ kind: "working", id: data.id, working: workings.get(data.id) ?? null });
  else judge(data.turn, data.scheme);
});

function judge(turn: number, scheme: Scheme): void {
  try {
    if (judgedBefore) glance(turn, scheme);
    const answer = assessStrength(scheme, (done, of) => tell({ kind: "progress", turn, done, of }), drawing.full);
    judgedBefore = true;
    workings = new Map(answer.accepted ? answer.proof.workings.map(({ id, working }) => [id, working]) : []);
    const report = answer.accepted ? answer.proof.report : null;
    tell({ kind: "judged", turn, assessment: answer.assessment, report });
  } catch (error) {
    tell({ kind: "broke", turn, why: error instanceof Error ? error.message : String(error) });
  }
}

/** After a full run its governing vectors are looked at first: they are few. */
function glance(turn: number, scheme: Scheme): void {
  const live = drawing.live(scheme);
  if (live.accepted) tell({ kind: "glance", turn, parts: live.parts, vectors: live.vectors });
}
