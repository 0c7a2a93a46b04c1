import type { ShareAsk, ShareTold } from "./share-asks.ts";

/**
 * Work that is shared: plain steps come out of it, an ask of a helper or what was told of an earlier one, and it goes on when
 * it is given the ask's number or what was told. It waits for nothing itself; whoever runs it chooses threads and messages.
 */
export type SharedWork<Answer> = Generator<SharedStep, Answer, unknown>;
export type SharedStep = { readonly helper: number; readonly ask: ShareAsk } | { readonly toldOf: number };

type Work = ShareAsk["work"];

/** An ask on its way, by its number. */
export type Asked<Of extends Work> = { readonly work: Of; readonly number: number };

/** Asks a helper, who does it after what he was asked before; nobody waits. */
export function* ask<Of extends Work>(
  helper: number,
  what: Extract<ShareAsk, { readonly work: Of }> & { readonly work: Of },
): SharedWork<Asked<Of>> {
  const number = yield { helper, ask: what };
  if (typeof number !== "number") throw new TypeError("an ask is given its number");
  return { work: what.work, number };
}

/** What was told of an ask, once it is. */
export function* told<Of extends Work>({ number }: Asked<Of>): SharedWork<ShareTold[Of]> {
  // oxlint-disable-next-line typescript/consistent-type-assertions -- a helper runs this same code: what it tells is of the kind that was asked for
  return (yield { toldOf: number }) as ShareTold[Of];
}

/** The answer of work that no helper shares. */
export function alone<Answer>(work: SharedWork<Answer>): Answer {
  const next = work.next();
  if (next.done !== true) throw new Error("work without helpers asks nobody");
  return next.value;
}
