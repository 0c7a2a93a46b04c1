import type { Operation, Scheme } from "@cornerway/schema";
import type { Held } from "./held.ts";

/** How long the hand rests before what is slow to draw follows it, ms. */
export const restMs = 120;
/** A page that is behind hears of a move late, with one of its next frames: the hand rests once so many have brought none. */
const restFrames = 3;

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
  #moves = false;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #frame = 0;
  readonly #listeners = new Set<() => void>();
  readonly #kept: (() => void)[] = [];

  /** Where it is now; null where the drawing has it. */
  readonly now = (): Carried | null => this.#carried;

  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Done now, or once the hand rests where it moves: what comes from elsewhere draws nothing anew under it. Kept in order. */
  readonly atRest = (act: () => void): void => {
    if (this.#moves) this.#kept.push(act);
    else act();
  };

  /** Carries it on; `draw` is called once the hand rests, with what came meanwhile. */
  carry(carried: Carried, draw: (come: () => void) => void): void {
    this.#stayUp();
    this.#timer = setTimeout(() => this.#after(restFrames, draw), restMs);
    this.#carried = carried;
    this.#moves = true;
    for (const listener of this.#listeners) listener();
  }

  /** It is laid down. Nobody is told: the drawing made anew has it. */
  end(): void {
    this.#stayUp();
    this.#carried = null;
    this.#rest();
  }

  #after(frames: number, draw: (come: () => void) => void): void {
    this.#frame = requestAnimationFrame(() => {
      if (frames > 1) return this.#after(frames - 1, draw);
      draw(() => this.#rest());
    });
  }

  #rest(): void {
    this.#moves = false;
    for (const act of this.#kept.splice(0)) act();
  }

  #stayUp(): void {
    clearTimeout(this.#timer);
    cancelAnimationFrame(this.#frame);
  }
}

/** What is shifted as it is drawn, or drawn by itself, while the hand moves; anything else has the drawing made anew. */
export const isLifted = (held: Held | null): boolean => held !== null && liftedKinds.has(held.kind);
const liftedKinds: ReadonlySet<Held["kind"]> = new Set<Held["kind"]>(["element", "group", "unit", "edges", "cut"]);

/** True where what is held is lifted already, and is only carried on. */
export function isCarriedOn(drawn: Held | null, now: Held): boolean {
  if (now.kind === "unit" && drawn?.kind === "unit") {
    const { id, type, turnMdeg, tag } = drawn.unit;
    return now.unit.id === id && now.unit.type === type && now.unit.turnMdeg === turnMdeg && now.unit.tag === tag;
  }
  return isLifted(now) && drawn?.kind === now.kind;
}
