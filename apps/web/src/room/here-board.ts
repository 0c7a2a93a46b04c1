import type { Operation, PersonId } from "@cornerway/schema";
import type { Here } from "../data/live-socket.ts";

/**
 * Who else has this project open. Only whoever shows them listens: a pointer of someone else that moves draws no sheet anew,
 * and one's own, which the line says back, nothing at all.
 */
export class HereBoard {
  readonly #meId: PersonId;
  #others: Here = [];
  #dragged: readonly Operation[][] = [];
  readonly #listeners = new Set<() => void>();

  constructor(meId: PersonId) {
    this.#meId = meId;
  }

  readonly now = (): Here => this.#others;

  /** What each of them is dragging; the same list until one of them drags on. */
  readonly dragged = (): readonly Operation[][] => this.#dragged;

  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** All who are here, as the line tells them. */
  readonly put = (people: Here): void => {
    const others = people.filter(({ personId }) => personId !== this.#meId);
    if (alike(others, this.#others)) return;
    const dragged = others.flatMap(({ presence }) => (presence?.dragging == null ? [] : [presence.dragging]));
    this.#others = others;
    if (!alike(dragged, this.#dragged)) this.#dragged = dragged;
    for (const listener of this.#listeners) listener();
  };
}

const alike = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
