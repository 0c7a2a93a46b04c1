/** What was last made of an object and of what else it hangs on, as long as the object is there; what it hangs on is told by identity. */
export class LastMade<T> {
  private readonly kept = new WeakMap<object, { readonly besides: readonly unknown[]; readonly made: T }>();

  take(of: object, besides: readonly unknown[], make: () => T): T {
    const known = this.kept.get(of);
    if (known !== undefined && areSame(known.besides, besides)) return known.made;
    const made = make();
    this.kept.set(of, { besides, made });
    return made;
  }
}

export const areSame = (some: readonly unknown[], others: readonly unknown[]): boolean =>
  some.length === others.length && some.every((one, n) => one === others[n]);
