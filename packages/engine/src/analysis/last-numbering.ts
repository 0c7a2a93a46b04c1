import type { Element } from "../elements/element.ts";
import type { FrontTree } from "../numerics/front-tree.ts";
import { sameNumbers } from "../numerics/same-graph.ts";

/** The order of work for some elements and what it numbers. */
export interface Numbering {
  readonly tree: FrontTree;
  /** Of each freedom, −1 where it is held or idle. */
  readonly equationOf: Int32Array;
  /** Of each element's freedoms. */
  readonly equations: readonly Int32Array[];
}

/**
 * The numbering made last, for elements on the very same freedoms: under the next set of assumptions a container has the same
 * lines. No two parts share these arrays but where the one was made from the other. `alike`: where places say nothing of the
 * order of work, equal freedoms are the same, as between containers of which one was edited.
 */
export class LastNumbering {
  private last: Kept | undefined;
  private readonly alike: (one: Int32Array, other: Int32Array) => boolean;

  constructor(alike = (one: Int32Array, other: Int32Array): boolean => one === other) {
    this.alike = alike;
  }

  /** `retained` is null where nothing is. */
  take(
    elements: readonly Element[],
    active: Uint8Array,
    retained: Uint8Array | null,
    number: () => Numbering,
  ): Numbering {
    const { last } = this;
    if (
      last !== undefined &&
      this.isOn(elements, last.freedoms) &&
      areSame(active, last.active) &&
      areSame(retained, last.retained)
    )
      return last.numbering;
    const numbering = number();
    this.last = { freedoms: elements.map(({ freedoms }) => freedoms), active, retained, numbering };
    return numbering;
  }

  private isOn(elements: readonly Element[], freedoms: readonly Int32Array[]): boolean {
    if (elements.length !== freedoms.length) return false;
    for (let n = 0; n < freedoms.length; n++) {
      const [one, other] = [elements[n]?.freedoms, freedoms[n]];
      if (one === undefined || other === undefined || !this.alike(one, other)) return false;
    }
    return true;
  }
}

interface Kept {
  readonly freedoms: readonly Int32Array[];
  readonly active: Uint8Array;
  readonly retained: Uint8Array | null;
  readonly numbering: Numbering;
}

const areSame = (one: Uint8Array | null, other: Uint8Array | null): boolean =>
  one === other || (one !== null && other !== null && sameNumbers(one, other));
