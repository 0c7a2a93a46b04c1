import type { Operation, Scheme } from "@cornerway/schema";
import type { Side } from "../drawing/contract.ts";
import type { ToolName } from "../sheet/contract.ts";
import type * as Acts from "./acts.ts";
import type { useChosen } from "./use-chosen.ts";
import type { useHeld } from "./use-held.ts";

export interface HandOptions {
  /** The scheme on the paper, without what is held. */
  scheme: Scheme;
  /** Draws one act; false when the scheme would not take it. */
  draw: (operations: Operation[]) => boolean;
  cannot: (why: string) => void;
  mayDraw: boolean;
  side: Side;
  /** What stands on these and would stay; nothing where nobody knows. */
  standing?: (ids: readonly string[]) => readonly string[];
  /** True where the paper draws what is held as part of the scheme on its views: it is lifted off while the hand moves. */
  lifts?: boolean;
}

/** What an act of the hand finds as it is done, and the ways to change it. `Hand` is what may be asked of the hand later. */
export interface HandState<Hand> extends Required<HandOptions> {
  /** What does it; null before it is fetched. */
  acts: typeof Acts | null;
  /** Kept until the acts are there, and done then, in order. */
  wait: (again: (hand: Hand) => void) => void;
  isWaiting: () => boolean;
  tool: ToolName | null;
  setTool: (tool: ToolName | null) => void;
  chosen: ReturnType<typeof useChosen>;
  holding: ReturnType<typeof useHeld>;
  /** What would go, while it is asked about what hangs or stands on it. */
  going: readonly string[] | null;
  setGoing: (ids: readonly string[] | null) => void;
}

export const onlyArchitect = "Only the architect draws.";
