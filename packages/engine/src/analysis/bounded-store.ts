/** Values by key, the least recently used dropped first once their sizes together pass a limit. */
export class BoundedStore<T> {
  private readonly kept = new Map<string, { value: T; bytes: number }>();
  private readonly limitBytes: number;
  private readonly bytesOf: (value: T) => number;
  private bytes = 0;
  /** How many values were made because none was held. */
  made = 0;

  constructor(limitBytes: number, bytesOf: (value: T) => number) {
    this.limitBytes = limitBytes;
    this.bytesOf = bytesOf;
  }

  get size(): number {
    return this.kept.size;
  }

  has(key: string): boolean {
    return this.kept.has(key);
  }

  take(key: string, make: () => T): T {
    const found = this.kept.get(key);
    if (found !== undefined) {
      this.kept.delete(key);
      this.kept.set(key, found);
      return found.value;
    }
    this.made++;
    const value = make();
    this.keep(key, value);
    return value;
  }

  private keep(key: string, value: T): void {
    const bytes = this.bytesOf(value);
    this.kept.set(key, { value, bytes });
    this.bytes += bytes;
    for (const [oldest, held] of this.kept) {
      if (this.bytes <= this.limitBytes || oldest === key) return;
      this.kept.delete(oldest);
      this.bytes -= held.bytes;
    }
  }
}
