import { unitSystems, type UnitSystem } from "@cornerway/schema";

/** The units one person reads in, kept by this browser; tells whoever draws numbers when they change. */
class UnitsSetting {
  readonly #listeners = new Set<() => void>();
  #personId: string | null = null;
  #units: UnitSystem = "SI";

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly get = (): UnitSystem => this.#units;

  /** Someone stands at the desk, or nobody does. */
  forPerson(personId: string | null): void {
    this.#personId = personId;
    const kept = personId === null ? null : localStorage.getItem(keyOf(personId));
    this.#change(unitSystems.find((known) => known === kept) ?? "SI");
  }

  choose(units: UnitSystem): void {
    if (this.#personId !== null) localStorage.setItem(keyOf(this.#personId), units);
    this.#change(units);
  }

  #change(units: UnitSystem): void {
    if (units === this.#units) return;
    this.#units = units;
    for (const listener of this.#listeners) listener();
  }
}

const keyOf = (personId: string): string => `cornerway.units.${personId}`;

export const unitsSetting = new UnitsSetting();
