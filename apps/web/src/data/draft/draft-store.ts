import type { Draft, DraftAct, DraftActDone, Operation, RecordEntry, Refusal } from "@cornerway/schema";
import { mayPass, ServiceProblem } from "../http.ts";
import { acknowledge, drawAct, markSent, openDraft, setAside, settleConflict, withdraw } from "./draft-state.ts";
import type { DraftState } from "./draft-state.ts";
import { changedSince, emptyHistory, forget, ownAct, remember } from "./own-history.ts";
import type { OwnAct, OwnHistory } from "./own-history.ts";
import { receiveDrawn, replaceServer } from "./receive-drawn.ts";

export interface DraftPorts {
  fetchDraft(): Promise<Draft>;
  sendAct(act: DraftAct): Promise<DraftActDone>;
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
  /** What the service would not take, in its words; cleared by the next move. */
  refused: string | null;
}

export type DrawResult =
  { ok: true } | { ok: false; refusal: Refusal } | { ok: false; changed: string[] } | { ok: false; nothing: true };

/** The draft on this page: the server's, with this page's acts on top, sent one after the other. */
export class DraftStore {
  readonly #ports: DraftPorts;
  readonly #listeners = new Set<() => void>();
  #state: DraftState;
  #history: OwnHistory = emptyHistory;
  #cutOffSince: number | null = null;
  #refused: string | null = null;
  #busy = false;
  #tries = 0;
  #callOff: (() => void) | null = null;
  #snapshot: DraftSnapshot;

  constructor(draft: Draft, ports: DraftPorts) {
    this.#ports = ports;
    this.#state = openDraft(draft);
    this.#snapshot = this.#picture();
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
      this.#set(replaceServer(this.#state, await this.#ports.fetchDraft()));
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

  /** Takes away what was said about a refused act. */
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
    if (this.#busy || this.#callOff !== null || next === undefined) return;
    if (this.#state.pending.some((act) => act.acknowledged !== null)) return this.#reloadSoon();
    this.#busy = true;
    this.#set(markSent(this.#state, next.id, true));
    const act: DraftAct = {
      id: next.id,
      base: this.#state.number,
      operations: next.operations,
      ...(next.undoes === null ? {} : { undoes: next.undoes }),
    };
    void this.#ports.sendAct(act).then(
      (done) => this.#took(next.id, done),
      (error: unknown) => this.#answered(next.id, error),
    );
  }

  #took(actId: string, done: DraftActDone): void {
    this.#busy = false;
    this.#tries = 0;
    this.#cutOffSince = null;
    this.#set(acknowledge(this.#state, actId, done));
    this.#pump();
  }

  #answered(actId: string, error: unknown): void {
    this.#busy = false;
    if (mayPass(error)) {
      this.#set(markSent(this.#state, actId, false));
      return this.#stumble(error);
    }
    const conflict = error instanceof ServiceProblem ? error.problem.conflict : undefined;
    this.#history = forget(this.#history, actId);
    if (conflict !== undefined) {
      this.#set(setAside(this.#state, actId, conflict.elements, conflict.theirs));
      return void this.reload();
    }
    this.#refused = error instanceof Error ? error.message : String(error);
    this.#set(withdraw(this.#state, actId));
    void this.reload();
  }

  /** The line is down or the office has no hand free: the acts stay here and are tried again, ever less often. */
  #stumble(error: unknown): void {
    if (!mayPass(error)) {
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
    this.#state = state;
    this.#snapshot = this.#picture();
    for (const listener of this.#listeners) listener();
  }

  #picture(): DraftSnapshot {
    return {
      ...this.#state,
      canUndo: this.#history.done.length > 0,
      canRedo: this.#history.undone.length > 0,
      cutOffSince: this.#cutOffSince,
      refused: this.#refused,
    };
  }
}
