import { assess, premium } from "@cornerway/engine";
import type { AssessAnswer, AssessQuestion } from "./messages.ts";

/** The engine on a thread of its own: one scheme in, one assessment out. */
addEventListener("message", ({ data }: MessageEvent<AssessQuestion>) => {
  postMessage(answer(data));
});

function answer({ turn, scheme, book }: AssessQuestion): AssessAnswer {
  try {
    const assessment = assess(scheme);
    return { turn, assessment, premium: book && premium(scheme, book, assessment.marks) };
  } catch (error) {
    return { turn, broke: error instanceof Error ? error.message : String(error) };
  }
}
