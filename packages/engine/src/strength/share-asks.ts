import type { Scheme } from "@cornerway/schema";
import type { AssumptionId } from "./assumption-sets.ts";
import type { ElementResult } from "./element-result.ts";
import { strengthLive, type GoverningVectors, type LiveStrength } from "./live-strength.ts";
import type { ScreenedSet } from "./screened-set.ts";
import type { StrengthMemory } from "./solve-runs.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import { strengthGround } from "./strength-plan.ts";
import { StrengthShare, type Beside } from "./strength-share.ts";
import type { Lean } from "./sway.ts";
import type { WorstFound } from "./worst-found.ts";

/** What another thread is asked to do of a run, one after another; a scheme is taken up first. */
export type ShareAsk =
  | { readonly work: "take up"; readonly scheme: Scheme }
  | { readonly work: "leans" }
  | { readonly work: "prepare"; readonly set: AssumptionId }
  | {
      readonly work: "screened";
      readonly set: AssumptionId;
      readonly enlargement: number;
      readonly names?: ReadonlySet<string>;
    }
  | { readonly work: "results"; readonly worsts: readonly WorstFound[] }
  | { readonly work: "beside"; readonly what: Beside }
  /** A few vectors of a scheme, whichever was taken up. */
  | {
      readonly work: "look";
      readonly scheme: Scheme;
      readonly governed: GoverningVectors;
      readonly enlargement: number;
    };

/** What it tells of each. */
export type ShareTold = {
  readonly "take up": undefined;
  readonly leans: readonly Lean[];
  readonly prepare: undefined;
  readonly screened: ScreenedSet;
  readonly results: readonly ElementResult[];
  readonly beside: readonly ElementResult[];
  readonly look: LiveStrength;
};

/** A thread that does what it is asked of a scheme, on a memory of its own. */
export class ShareThread {
  private readonly basisFor: (scheme: Scheme) => StrengthBasis;
  private readonly memory: StrengthMemory;
  private share: StrengthShare | undefined;

  constructor(basisFor: (scheme: Scheme) => StrengthBasis, memory: StrengthMemory) {
    [this.basisFor, this.memory] = [basisFor, memory];
  }

  answer(ask: ShareAsk): ShareTold[ShareAsk["work"]] {
    if (ask.work === "take up") {
      this.share = this.opened(ask.scheme);
      return undefined;
    }
    if (ask.work === "look")
      return strengthLive(ask.scheme, this.basisFor(ask.scheme), this.memory, ask.governed, ask.enlargement);
    const { share } = this;
    if (share === undefined) throw new Error("no scheme was taken up");
    if (ask.work === "leans") return share.leans();
    if (ask.work === "screened") return share.screened(ask.set, ask.enlargement, ask.names);
    if (ask.work === "results") return share.results(ask.worsts);
    if (ask.work === "beside") return share.beside(ask.what);
    share.prepare(ask.set);
    return undefined;
  }

  private opened(scheme: Scheme): StrengthShare {
    const basis = this.basisFor(scheme);
    const ground = strengthGround(scheme, basis);
    if (!ground.accepted) throw new Error("a scheme is taken up by other threads only where its hazards are accepted");
    return new StrengthShare(ground, basis, this.memory);
  }
}
