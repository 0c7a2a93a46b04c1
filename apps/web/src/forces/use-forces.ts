import { governingFirst, type RunForces } from "@cornerway/engine";
import { movesSupport, type Scheme, type StrengthReport } from "@cornerway/schema";
import { useEffect, useMemo, useState } from "react";
import type { LiveStrength } from "../worker/use-strength.ts";

/** Solved forces of one run of the scheme shown, or of the one before it while it is judged. */
export interface Forces {
  /** The scheme they are of. */
  scheme: Scheme;
  run: string;
  /** Every run there is, what governs most first. */
  runs: readonly string[];
  /** The run that was asked for; null for the one that governs. */
  asked: string | null;
  /** Null where nothing makes the run stand. */
  forces: RunForces | null;
  why: string | null;
}

export interface ForcesShown {
  told: Forces | null;
  /** True where they are of the scheme shown and of the run chosen. */
  stand: boolean;
  choose: (run: string) => void;
}

export type Asking = Pick<LiveStrength, "forcesOf">;

/**
 * Forces of the chosen run, or of the one that governs most with its supports where they are drawn, asked of the thread that judged the scheme, once it has.
 * `judged` is null while there is no answer on the scheme shown.
 */
export function useForces(scheme: Scheme, judged: StrengthReport | null, { forcesOf }: Asking): ForcesShown {
  const [told, setTold] = useState<Forces | null>(null);
  const [chosen, choose] = useState<string | null>(null);
  const wanted = useMemo(
    () => [...(chosen === null ? [] : [chosen]), ...governing(judged?.results ?? [])],
    [chosen, judged],
  );
  useEffect(() => {
    if (judged === null) return undefined;
    let left = false;
    void forcesOf(scheme, wanted).then((answer) => {
      if (left || answer === null) return;
      const known = { scheme, run: "", runs: [], asked: chosen, forces: null, why: null };
      if ("why" in answer) return setTold({ ...known, why: answer.why });
      const runs = governingFirst(
        answer.runs.map((id) => ({ id })),
        judged.results,
      ).map(({ id }) => id);
      setTold({ ...known, run: answer.run, runs, forces: answer.forces });
    });
    return () => {
      left = true;
    };
  }, [scheme, judged, chosen, wanted, forcesOf]);
  return { told, stand: judged !== null && told?.scheme === scheme && told.asked === chosen, choose };
}

/** Runs that govern something, the fullest first; before those in which a support moves, which say less of where loads go. */
function governing(results: StrengthReport["results"]): string[] {
  const runs = results.filter(({ utilisation }) => utilisation !== null).map(({ run }) => run);
  return [...runs.filter((run) => !movesSupport(run)), ...runs.filter(movesSupport)];
}
