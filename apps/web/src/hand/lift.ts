import type { Operation, Scheme } from "@cornerway/schema";
import type { Held } from "./held.ts";

/** How long the hand rests before what is slow to draw follows it, ms. */
export const restMs = 120;

/** What the hand holds, and what it makes of the scheme. */
export interface Carried {
  held: Held;
  operations: readonly Operation[];
  /** The scheme without what is held, and with it. */
  from: Scheme;
  scheme: Scheme;
}

/**
 * What is lifted off the paper: where it is now, while the drawing still has it where the hand last rested. Whoever listens
 * shifts what is drawn; nothing is drawn anew before the hand rests.
 */
export class Lift {
  #carried: Carried | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #frame = 0;
  readonly #listeners = new Set<() => void>();

  /** Where it is now; null where the drawing has it. */
  readonly now = (): Carried | null => this.#carried;

  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Carries it on; `draw` is called once the hand rests. */
  carry(carried: Carried, draw: () => void): void {
    this.#stayUp();
    // A page that is behind hears of a move late, with its next frame: the hand rests if that frame brings none.
    this.#timer = setTimeout(() => (this.#frame = requestAnimationFrame(draw)), restMs);
    this.#carried = carried;
    for (const listener of this.#listeners) listener();
  }

  /** It is laid down. Nobody is told: the drawing made anew has it. */
  end(): void {
    this.#stayUp();
    this.#carried = null;
  }

  #stayUp(): void {
    clearTimeout(this.#timer);
    cancelAnimationFrame(this.#frame);
  }
}

/** What is shifted as it is drawn while the hand moves; anything else changes its shape and is drawn anew. */
export const isLifted = (held: Held | null): boolean =>
  held?.kind === "element" || held?.kind === "group" || held?.kind === "unit";

/** True where what is held is drawn, and is only elsewhere now. */
export function isShifted(drawn: Held | null, now: Held): boolean {
  if (now.kind === "unit" && drawn?.kind === "unit") {
    const { id, type, turnMdeg, tag } = drawn.unit;
    return now.unit.id === id && now.unit.type === type && now.unit.turnMdeg === turnMdeg && now.unit.tag === tag;
  }
  return isLifted(now) && drawn?.kind === now.kind;
}
