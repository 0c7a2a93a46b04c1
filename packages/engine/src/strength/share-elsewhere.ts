import type { ShareAsk } from "./share-asks.ts";

/** An ask on its way to another thread, and what comes back: what was told, or why not. */
export type AskPosted = { readonly turn: number; readonly ask: ShareAsk };
export type ToldBack =
  { readonly turn: number; readonly told: unknown } | { readonly turn: number; readonly why: string };

/** Who hears of an answer, or of what stopped it. */
export interface Waiting<Answer> {
  settle(answer: Answer): void;
  fail(error: Error): void;
}

/** Another thread that takes a share of the work: asks go out at once, and are answered in turn. */
export class ShareElsewhere {
  private readonly post: (posted: AskPosted) => void;
  private readonly waiting = new Map<number, Waiting<unknown>>();
  private turn = 0;
  private gone: Error | undefined;

  constructor(post: (posted: AskPosted) => void) {
    this.post = post;
  }

  /** True once the thread has ended. */
  get isGone(): boolean {
    return this.gone !== undefined;
  }

  /** Fails with what stopped the thread. */
  ask(ask: ShareAsk, waiting: Waiting<unknown>): void {
    if (this.gone !== undefined) return waiting.fail(this.gone);
    this.turn += 1;
    this.waiting.set(this.turn, waiting);
    this.post({ turn: this.turn, ask });
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
    const left = [...this.waiting.values()];
    this.waiting.clear();
    for (const waiting of left) waiting.fail(error);
  }
}
