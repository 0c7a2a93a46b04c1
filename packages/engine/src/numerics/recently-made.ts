/** Things by the text they are made from, made once; the least recently asked for are forgotten. */
export class RecentlyMade<T> {
  private readonly kept = new Map<string, T>();
  private readonly most: number;

  constructor(most: number) {
    this.most = most;
  }

  take(text: string, make: () => T): T {
    const made = this.kept.get(text) ?? make();
    this.kept.delete(text);
    this.kept.set(text, made);
    const [oldest = text] = this.kept.keys();
    if (this.kept.size > this.most) this.kept.delete(oldest);
    return made;
  }
}
