import type { Scheme } from "@cornerway/schema";
import { loadFlow, type LoadFlow } from "./load-flow.ts";
import { strengthBasisFor } from "./strength.ts";
import { governingVectors, strengthLive, type GoverningVectors, type LiveStrength } from "./strength/live-strength.ts";
import type { ShareElsewhere } from "./strength/share-elsewhere.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import { strengthOf, type Strength, type TellProgress } from "./strength/strength-of.ts";
import { strengthShared } from "./strength/strength-shared.ts";

/** Full runs and live answers on one memory: each full run says which vectors the live answers after it look at. */
export interface StrengthWhileDrawing {
  /** All vectors; only this is stored, submitted or printed. */
  readonly full: (scheme: Scheme, tell?: TellProgress) => Strength;
  /** The same, worked out in this thread and in those that help; rejects with what stopped one of them. */
  readonly fullShared: (scheme: Scheme, helpers: readonly ShareElsewhere[], tell?: TellProgress) => Promise<Strength>;
  /** Gravity and the vectors that governed the last full run, level loads enlarged as in it; no verdict, it waits for the full run. */
  readonly live: (scheme: Scheme) => LiveStrength;
  /** Where the load goes, run by run. */
  readonly flow: (scheme: Scheme) => LoadFlow;
}

export function strengthWhileDrawing(): StrengthWhileDrawing {
  const memory = strengthMemory();
  let governed: GoverningVectors = new Map();
  let enlargement: number | undefined;
  const kept = (answer: Strength): Strength => {
    if (answer.accepted) {
      governed = governingVectors(answer);
      enlargement = answer.enlargement;
    }
    return answer;
  };
  return {
    full: (scheme, tell) => kept(strengthOf(scheme, strengthBasisFor(scheme.site.edition), memory, tell)),
    fullShared: async (scheme, helpers, tell) =>
      kept(await strengthShared(scheme, strengthBasisFor(scheme.site.edition), memory, helpers, tell)),
    live: (scheme) => strengthLive(scheme, strengthBasisFor(scheme.site.edition), memory, governed, enlargement),
    flow: (scheme) => loadFlow(scheme, memory),
  };
}
