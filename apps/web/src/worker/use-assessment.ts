import type { CostBook, Scheme } from "@cornerway/schema";
import { useEffect, useRef, useState } from "react";
import { atOnce, type Hearing } from "./hearing.ts";
import { LatestAssessment } from "./latest-assessment.ts";
import type { Assessed } from "./latest-assessment.ts";
import type { AssessAnswer } from "./messages.ts";

/** Under this no sign of waiting is given. */
const patienceMs = 100;

export interface LiveAssessment {
  /** The last answer, perhaps for an earlier scheme while `waiting`. */
  assessed: Assessed | null;
  /** True when the scheme on the screen has waited longer than 0.1 s. */
  waiting: boolean;
}

/**
 * The engine's answer on the scheme shown, from a Web Worker, priced where a cost book is given; asks again whenever
 * either changes. `when` hears what it says.
 */
export function useAssessment(scheme: Scheme, book: CostBook | null = null, when: Hearing = atOnce): LiveAssessment {
  const [assessed, setAssessed] = useState<Assessed | null>(null);
  const [late, setLate] = useState<Scheme | null>(null);
  const engine = useRef<LatestAssessment | null>(null);

  useEffect(() => {
    const worker = new Worker(new URL("./engine.worker.ts", import.meta.url), { type: "module" });
    engine.current = new LatestAssessment(lineTo(worker, when), setAssessed);
    return () => worker.terminate();
  }, [when]);

  useEffect(() => {
    engine.current?.ask(scheme, book);
    const timer = setTimeout(() => setLate(scheme), patienceMs);
    return () => clearTimeout(timer);
  }, [scheme, book]);

  return { assessed, waiting: late === scheme && assessed?.scheme !== scheme };
}

const lineTo = (worker: Worker, when: Hearing) => ({
  post: (question: unknown) => worker.postMessage(question),
  listen: (hear: (answer: AssessAnswer) => void) =>
    worker.addEventListener("message", (event: MessageEvent<AssessAnswer>) => when(() => hear(event.data))),
});
