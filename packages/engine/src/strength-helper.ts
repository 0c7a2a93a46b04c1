import { strengthBasisFor } from "./strength.ts";
import { ShareThread } from "./strength/share-asks.ts";
import type { AskPosted, ToldBack } from "./strength/share-elsewhere.ts";
import { strengthMemory } from "./strength/strength-memory.ts";

/**
 * What a thread does that helps others with full runs: it answers what they post, in turn, and tells what the engine
 * throws. Its memory is its own, as large as that of any run.
 */
export function strengthHelper(): (posted: AskPosted) => ToldBack {
  const thread = new ShareThread((scheme) => strengthBasisFor(scheme.site.edition), strengthMemory());
  return ({ turn, ask }) => {
    try {
      return { turn, told: thread.answer(ask) };
    } catch (error) {
      return { turn, why: error instanceof Error ? error.message : String(error) };
    }
  };
}
