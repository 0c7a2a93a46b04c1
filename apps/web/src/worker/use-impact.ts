import type { Impact } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { useEffect, useRef, useState } from "react";
import type { ImpactAnswer, ImpactGround, ImpactQuestion } from "./impact-messages.ts";
import { LatestOnly } from "./latest-only.ts";

type Edit = { after: Scheme; ground: ImpactGround };
type Engine = { tell: (ground: ImpactGround) => void; edits: LatestOnly<Edit, ImpactAnswer> };

/** What an edit that is under way would undo: the last answer on this ground, perhaps of a step before; null without an edit. */
export function useImpact(ground: ImpactGround, after: Scheme | null): Impact | null {
  const [told, setTold] = useState<{ edit: Edit; impact: Impact | null } | null>(null);
  const engine = useRef<Engine | null>(null);

  useEffect(() => {
    const worker = new Worker(new URL("./impact.worker.ts", import.meta.url), { type: "module" });
    engine.current = engineOn(worker, (edit, answer) =>
      setTold({ edit, impact: "broke" in answer ? null : answer.impact }),
    );
    return () => worker.terminate();
  }, []);

  useEffect(() => engine.current?.tell(ground), [ground]);

  useEffect(() => {
    if (after !== null) engine.current?.edits.ask({ ground, after });
  }, [ground, after]);

  return after !== null && told?.edit.ground === ground ? told.impact : null;
}

function engineOn(worker: Worker, tell: (edit: Edit, answer: ImpactAnswer) => void): Engine {
  const post = (question: ImpactQuestion) => worker.postMessage(question);
  const line = {
    post: ({ turn, after }: Edit & { turn: number }) => post({ kind: "edit", turn, after }),
    listen: (hear: (answer: ImpactAnswer) => void) =>
      worker.addEventListener("message", ({ data }: MessageEvent<ImpactAnswer>) => hear(data)),
  };
  return { tell: (ground) => post({ kind: "ground", ground }), edits: new LatestOnly(line, tell) };
}
