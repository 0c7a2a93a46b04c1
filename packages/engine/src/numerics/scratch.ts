/**
 * Room for numbers on their way, handed out again and again with whatever was left in it: for work that writes every number
 * before it reads it. Allocating it anew for each of hundreds of containers costs more than the work (measured: the
 * collector runs by how much is allocated). Two users at a time need two of these.
 */
export class Scratch {
  private numbers = new Float64Array(0);

  /** At least `length` numbers of any value; very large rooms are not kept. */
  room(length: number): Float64Array {
    if (length > KEPT) return new Float64Array(length);
    if (length > this.numbers.length) this.numbers = new Float64Array(Math.min(KEPT, 2 * length));
    return this.numbers;
  }
}

const KEPT = 4_000_000;
