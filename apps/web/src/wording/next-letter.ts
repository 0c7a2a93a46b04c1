/** The letter of the revision after the last: A, B … Z, AA. */
export function nextLetter(last: string | null): string {
  if (last === null) return "A";
  const at = letters.indexOf(last.at(-1) ?? "A");
  const next = letters[at + 1];
  if (next !== undefined) return `${last.slice(0, -1)}${next}`;
  return last.length === 1 ? "AA" : `${nextLetter(last.slice(0, -1))}A`;
}

/** True when revision `a` comes after revision `b`: AA after Z. */
export const isLater = (a: string, b: string): boolean => (a.length === b.length ? a > b : a.length > b.length);

const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
