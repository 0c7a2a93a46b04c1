import type { ShareAsk, ShareTold } from "./share-asks.ts";

/** An ask on its way to another thread, and what comes back: what was told, or why not. */
export type AskPosted = { readonly turn: number; readonly ask: ShareAsk };
export type ToldBack =
  { readonly turn: number; readonly told: unknown } | { readonly turn: number; readonly why: string };

/** Whoever waits for an answer; the other thread runs this same code, so it is of the kind that was asked for. */
interface Waiting {
  settle(told: unknown): void;
  fail(error: Error): void;
}

/** Another thread that takes a share of the work: asks go out at once, and are answered in turn. */
export class ShareElsewhere {
  private readonly post: (posted: AskPosted) => void;
  private readonly waiting = new Map<number, Waiting>();
  private turn = 0;
  private gone: Error | undefined;

  constructor(post: (posted: AskPosted) => void) {
    this.post = post;
  }

  /** True once the thread has ended. */
  get isGone(): boolean {
    return this.gone !== undefined;
  }

  /** Rejects with what stopped the thread. */
  ask<Work extends ShareAsk["work"]>(ask: Extract<ShareAsk, { work: Work }>): Promise<ShareTold[Work]> {
    const told = new Promise<ShareTold[Work]>((settle, fail) => {
      if (this.gone !== undefined) return fail(this.gone);
      this.turn += 1;
      this.waiting.set(this.turn, { settle, fail });
      this.post({ turn: this.turn, ask });
    });
    // whoever asked hears of a failure when he comes to this answer; until then it is none that nobody handles
    told.catch(() => undefined);
    return told;
  }

  hear(back: ToldBack): void {
    const waiting = this.waiting.get(back.turn);
    this.waiting.delete(back.turn);
    if ("why" in back) waiting?.fail(new Error(back.why));
    else waiting?.settle(back.told);
  }

  /** The thread has ended: nothing asked of it will be answered. */
  end(error: Error): void {
    this.gone = error;
    for (const waiting of this.waiting.values()) waiting.fail(error);
    this.waiting.clear();
  }
}
