import type { Draft, DraftAct, DraftActDone, Operation, RecordEntry, Refusal } from "@cornerway/schema";
import { isProblem, mayPass, ServiceProblem } from "../http.ts";
import { acknowledge, drawAct, markSent, openDraft, setAside, settleConflict, takeUp } from "./draft-state.ts";
import type { DraftState } from "./draft-state.ts";
import type { Kept } from "./kept.ts";
import { changedSince, emptyHistory, forget, ownAct, remember } from "./own-history.ts";
import type { OwnAct, OwnHistory } from "./own-history.ts";
import { receiveDrawn, replaceServer, setDependentAside } from "./receive-drawn.ts";

export interface DraftPorts {
  fetchDraft(): Promise<Draft>;
  sendAct(act: DraftAct): Promise<DraftActDone>;
  /** Keeps what is not sent or not settled yet, beyond the life of the page; an act is kept before it is sent. */
  keep(kept: Kept): Promise<void>;
  newId(): string;
  /** Calls back after a while; returns how to call it off. */
  later(call: () => void, ms: number): () => void;
  now(): number;
}

export interface DraftSnapshot extends DraftState {
  canUndo: boolean;
  canRedo: boolean;
  /** When the line to the office dropped, or null while it holds. */
  cutOffSince: number | null;
  /** Why the draft cannot be read, in the service's words. */
  refused: string | null;
  /** True once this browser would not keep a move: closing the page would lose what is not sent. */
  keepsNothing: boolean;
}

export type DrawResult =
  { ok: true } | { ok: false; refusal: Refusal } | { ok: false; changed: string[] } | { ok: false; nothing: true };

/** True when the same act may be taken later: the line is down, or the page has to be signed in anew. */
const mayBeTaken = (error: unknown): boolean =>
  mayPass(error) || isProblem(error, "not-signed-in") || isProblem(error, "csrf-refused");

/** The draft on this page: the server's, with this page's acts on top, sent one after the other. */
export class DraftStore {
  readonly #ports: DraftPorts;
  readonly #listeners = new Set<() => void>();
  #state: DraftState;
  #history: OwnHistory = emptyHistory;
  #cutOffSince: number | null = null;
  #refused: string | null = null;
  #keepsNothing = false;
  #busy = false;
  #stopped = false;
  #tries = 0;
  #callOff: (() => void) | null = null;
  #kept: Promise<void> = Promise.resolve();
  #snapshot: DraftSnapshot;

  constructor(draft: Draft, ports: DraftPorts) {
    this.#ports = ports;
    this.#state = openDraft(draft);
    this.#snapshot = this.#picture();
  }

  /** Takes up what another page kept and did not send: it goes on top of the draft and is sent from here. */
  adopt(kept: Kept): void {
    this.#set(takeUp(this.#state, kept));
    this.#pump();
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly getSnapshot = (): DraftSnapshot => this.#snapshot;

  /** One drop, one typed number or one press: drawn here at once and sent. */
  draw(operations: Operation[]): DrawResult {
    return this.#act(operations, null, (act) => remember(this.#history, act));
  }

  undo(): DrawResult {
    const act = this.#history.done.at(-1);
    if (act === undefined) return { ok: false, nothing: true };
    const changed = changedSince(act, this.#state.scheme);
    if (changed.length > 0) return this.#letStand(act.id, changed);
    return this.#act(act.inverse, act.id, (undo) => ({
      done: this.#history.done.slice(0, -1),
      undone: [...this.#history.undone, undo],
    }));
  }

  redo(): DrawResult {
    const act = this.#history.undone.at(-1);
    if (act === undefined) return { ok: false, nothing: true };
    const changed = changedSince(act, this.#state.scheme);
    if (changed.length > 0) return this.#letStand(act.id, changed);
    return this.#act(act.inverse, act.id, (again) => ({
      done: [...this.#history.done, again],
      undone: this.#history.undone.slice(0, -1),
    }));
  }

  /** Entries of the record, in order, as the live line brings them. */
  receive(entries: readonly RecordEntry[]): void {
    for (const { payload, actor } of entries) {
      if (payload?.kind === "revision sent") this.#set({ ...this.#state, movesSinceRevision: 0 });
      if (payload?.kind !== "drawn") continue;
      const after = receiveDrawn(this.#state, { ...payload, by: actor.name });
      if (after === null) return void this.reload();
      for (const { act } of after.conflicts) this.#history = forget(this.#history, act.id);
      this.#set(after);
    }
    this.#pump();
  }

  /** Reads the draft anew; used where an entry is missing. */
  async reload(): Promise<void> {
    try {
      const draft = await this.#ports.fetchDraft();
      // What is here is read only now: someone may have drawn while the draft was on its way.
      this.#set(replaceServer(this.#state, draft));
    } catch (error) {
      return this.#stumble(error);
    }
    this.#pump();
  }

  /** Mine sends the act again on top of theirs; theirs drops it. */
  answerConflict(actId: string, answer: "mine" | "theirs"): DrawResult {
    const conflict = this.#state.conflicts.find(({ act }) => act.id === actId);
    if (conflict === undefined) return { ok: false, nothing: true };
    this.#set(settleConflict(this.#state, actId));
    return answer === "mine" ? this.draw(conflict.act.operations) : { ok: true };
  }

  /** Takes away what was said about a draft that cannot be read. */
  dismissRefusal(): void {
    this.#refused = null;
    this.#set(this.#state);
  }

  /** Tries the line now. */
  retry(): void {
    this.#callOff?.();
    this.#callOff = null;
    this.#pump();
  }

  stop(): void {
    this.#stopped = true;
    this.#callOff?.();
    this.#listeners.clear();
  }

  /** A move that others drew over stays as it is; the way back goes on with the one before it. */
  #letStand(actId: string, changed: string[]): DrawResult {
    this.#history = forget(this.#history, actId);
    this.#set(this.#state);
    return { ok: false, changed };
  }

  #act(operations: Operation[], undoes: string | null, book: (act: OwnAct) => OwnHistory): DrawResult {
    const id = this.#ports.newId();
    const before = this.#state.scheme;
    const drawn = drawAct(this.#state, { id, operations, undoes });
    if (!drawn.ok) return drawn;
    this.#history = book(ownAct(id, operations, drawn.inverse, before, drawn.state.scheme));
    this.#refused = null;
    this.#set(drawn.state);
    this.#pump();
    return { ok: true };
  }

  #pump(): void {
    const next = this.#state.pending.find((act) => act.acknowledged === null);
    if (this.#busy || this.#stopped || this.#callOff !== null || next === undefined) return;
    if (this.#state.pending.some((act) => act.acknowledged !== null)) return this.#reloadSoon();
    this.#busy = true;
    this.#set(markSent(this.#state, next.id));
    void this.#keepAndSend(next.id).then(
      (done) => this.#took(next.id, done),
      (error: unknown) => this.#answered(next.id, error),
    );
  }

  /** Kept first, so that an act whose answer never came is sent again the same to the letter. Null: it came back already. */
  async #keepAndSend(actId: string): Promise<DraftActDone | null> {
    await this.#kept;
    const act = this.#state.pending.find(({ id }) => id === actId);
    if (act === undefined || act.base === null || act.acknowledged !== null) return null;
    const { id, base, operations, undoes } = act;
    return this.#ports.sendAct({ id, base, operations, ...(undoes === null ? {} : { undoes }) });
  }

  #took(actId: string, done: DraftActDone | null): void {
    if (this.#stopped) return;
    this.#busy = false;
    this.#tries = 0;
    this.#cutOffSince = null;
    if (done !== null) this.#set(acknowledge(this.#state, actId, done));
    this.#pump();
  }

  #answered(actId: string, error: unknown): void {
    if (this.#stopped) return;
    this.#busy = false;
    if (mayBeTaken(error)) return this.#stumble(error);
    this.#history = forget(this.#history, actId);
    const conflict = error instanceof ServiceProblem ? error.problem.conflict : undefined;
    if (conflict === undefined) {
      const why = error instanceof Error ? error.message : String(error);
      this.#set(setAside(this.#state, actId, { elements: [], why }));
    } else {
      const { elements, theirs } = conflict;
      const aside = setAside(this.#state, actId, { elements, theirs });
      this.#set(setDependentAside(aside, { reads: [], writes: elements }, theirs));
    }
    void this.reload();
  }

  /** The line is down or the office has no hand free: the acts stay here and are tried again, ever less often. */
  #stumble(error: unknown): void {
    if (!mayBeTaken(error)) {
      this.#refused = error instanceof Error ? error.message : String(error);
      return this.#set(this.#state);
    }
    this.#cutOffSince ??= this.#ports.now();
    this.#tries += 1;
    this.#set(this.#state);
    this.#callOff ??= this.#ports.later(() => this.retry(), Math.min(15_000, 500 * 2 ** this.#tries));
  }

  #reloadSoon(): void {
    this.#callOff ??= this.#ports.later(() => {
      this.#callOff = null;
      void this.reload();
    }, 400);
  }

  #set(state: DraftState): void {
    const { pending, conflicts } = this.#state;
    this.#state = state;
    if (state.pending !== pending || state.conflicts !== conflicts) this.#keep();
    this.#snapshot = this.#picture();
    for (const listener of this.#listeners) listener();
  }

  #keep(): void {
    const { pending, conflicts } = this.#state;
    this.#kept = this.#ports.keep({ pending, conflicts }).catch(() => {
      this.#keepsNothing = true;
      this.#set(this.#state);
    });
  }

  #picture(): DraftSnapshot {
    return {
      ...this.#state,
      canUndo: this.#history.done.length > 0,
      canRedo: this.#history.undone.length > 0,
      cutOffSince: this.#cutOffSince,
      refused: this.#refused,
      keepsNothing: this.#keepsNothing,
    };
  }
}
