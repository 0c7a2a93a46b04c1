import type { Scheme } from "@cornerway/schema";
import { loadFlow, type LoadFlow } from "./load-flow.ts";
import { strengthBasisFor } from "./strength.ts";
import { governingVectors, strengthLive, type GoverningVectors, type LiveStrength } from "./strength/live-strength.ts";
import { alone, type SharedWork } from "./strength/shared-work.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import type { Strength, TellProgress } from "./strength/strength-of.ts";
import { strengthShared } from "./strength/strength-shared.ts";

/** Full runs and live answers on one memory: each full run says which vectors the live answers after it look at. */
export interface StrengthWhileDrawing {
  /** All vectors; only this is stored, submitted or printed. */
  readonly full: (scheme: Scheme, tell?: TellProgress) => Strength;
  /** The same to the bit, shared with so many helpers. */
  readonly fullShared: (scheme: Scheme, helping: number, tell?: TellProgress) => SharedWork<Strength>;
  /** Gravity and the vectors that governed the last full run, level loads enlarged as in it; no verdict, it waits for the full run. */
  readonly live: (scheme: Scheme) => LiveStrength;
  /** Where the load goes, run by run. */
  readonly flow: (scheme: Scheme) => LoadFlow;
}

export function strengthWhileDrawing(): StrengthWhileDrawing {
  const memory = strengthMemory();
  let governed: GoverningVectors = new Map();
  let enlargement: number | undefined;
  function* fullShared(scheme: Scheme, helping: number, tell?: TellProgress): SharedWork<Strength> {
    const basis = strengthBasisFor(scheme.site.edition);
    const answer = yield* strengthShared(scheme, basis, memory, helping, tell);
    if (answer.accepted) {
      governed = governingVectors(answer);
      enlargement = answer.enlargement;
    }
    return answer;
  }
  return {
    full: (scheme, tell) => alone(fullShared(scheme, 0, tell)),
    fullShared,
    live: (scheme) => strengthLive(scheme, strengthBasisFor(scheme.site.edition), memory, governed, enlargement),
    flow: (scheme) => loadFlow(scheme, memory),
  };
}
