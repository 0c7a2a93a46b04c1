import type { Scheme } from "@cornerway/schema";

/** A free id and tag for each new element, numbered on from those that are taken, so that one scheme gives one list. */
export class FreshNames {
  private readonly taken: Set<string>;

  constructor(scheme: Scheme) {
    const { containers, openings, posts, pads, freeLoads, beams, seats, ties, locks } = scheme;
    const tagged = [...containers, ...openings, ...posts, ...pads, ...freeLoads, ...beams, ...seats, ...ties, ...locks];
    const untagged = [...scheme.loads, ...scheme.uses, ...scheme.overrides];
    this.taken = new Set([...tagged.flatMap(({ id, tag }) => [id, tag]), ...untagged.map(({ id }) => id)]);
  }

  next(capital: string): { readonly id: string; readonly tag: string } {
    for (let number = 1; ; number += 1) {
      const tag = `${capital}${number}`;
      const id = tag.toLowerCase();
      if (this.taken.has(tag) || this.taken.has(id)) continue;
      this.taken.add(tag).add(id);
      return { id, tag };
    }
  }
}
