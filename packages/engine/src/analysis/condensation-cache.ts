import { condense, type Condensation } from "./condense.ts";
import type { Substructure } from "./substructure.ts";

/** Condensed parts by key, the least recently used dropped first once `limitBytes` is passed. */
export class CondensationCache<P extends Substructure> {
  private readonly kept = new Map<string, { condensation: Condensation<P>; bytes: number }>();
  private readonly limitBytes: number;
  private bytes = 0;
  /** How many parts were condensed because the cache did not hold them. */
  condensed = 0;

  constructor(limitBytes: number) {
    this.limitBytes = limitBytes;
  }

  /** The condensed part of this key; `build` is called only when it is not held. */
  take(key: string, build: () => P): Condensation<P> {
    const found = this.kept.get(key);
    if (found !== undefined) {
      this.kept.delete(key);
      this.kept.set(key, found);
      return found.condensation;
    }
    this.condensed++;
    const condensation = condense(build());
    this.keep(key, condensation);
    return condensation;
  }

  get size(): number {
    return this.kept.size;
  }

  private keep(key: string, condensation: Condensation<P>): void {
    const bytes = bytesOf(condensation);
    this.kept.set(key, { condensation, bytes });
    this.bytes += bytes;
    for (const [oldest, held] of this.kept) {
      if (this.bytes <= this.limitBytes || oldest === key) return;
      this.kept.delete(oldest);
      this.bytes -= held.bytes;
    }
  }
}

const BYTES_PER_NUMBER = 8;

function bytesOf(condensation: Condensation<Substructure>): number {
  if (!condensation.stable) return 0;
  const { factor, stiffness, equationOf, part } = condensation.condensed;
  const panels = factor.panels.reduce((sum, panel) => sum + panel.length, 0);
  const elements = part.elements.reduce((sum, { matrix }) => sum + matrix.length, 0);
  return BYTES_PER_NUMBER * (panels + elements + stiffness.length + equationOf.length);
}
