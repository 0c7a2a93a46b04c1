/** Letters of grid rows: I and O are skipped, so that no row is read as a figure. */
const letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

/** The habit: rows start at K, clear of the first ten revisions. */
const firstByHabit = "K";

/**
 * The letter of row `index` (0 = northernmost). Rows start after every revision letter in use, at K as long as that is
 * after them; past Z they go on with AA, AB.
 */
export function gridLetter(index: number, revisionLetters: readonly string[]): string {
  const at = firstLetterAt(revisionLetters) + index;
  const turn = Math.floor(at / letters.length);
  const letter = letters.charAt(at % letters.length);
  return turn === 0 ? letter : letters.charAt(turn - 1) + letter;
}

function firstLetterAt(revisionLetters: readonly string[]): number {
  const used = revisionLetters.map((letter) => letters.split("").findLastIndex((each) => each <= letter));
  return Math.max(letters.indexOf(firstByHabit), ...used.map((at) => at + 1));
}
