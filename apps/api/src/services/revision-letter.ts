const alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/** 1 is A, 26 is Z, 27 is AA, 702 is ZZ. Throws beyond. */
export function revisionLetter(ordinal: number): string {
  if (!Number.isInteger(ordinal) || ordinal < 1 || ordinal > 26 * 27)
    throw new RangeError(`no letter for revision ${ordinal}`);
  const tens = Math.floor((ordinal - 1) / 26);
  return `${alphabet.charAt(tens - 1)}${alphabet.charAt((ordinal - 1) % 26)}`;
}
