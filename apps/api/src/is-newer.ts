/** True when version `a` comes after `b`; both are three numbers with dots, as the engine states its own. */
export function isNewer(a: string, b: string): boolean {
  const [ofA, ofB] = [numbersOf(a), numbersOf(b)];
  const at = ofA.findIndex((number, place) => number !== (ofB[place] ?? 0));
  return at >= 0 && (ofA[at] ?? 0) > (ofB[at] ?? 0);
}

const numbersOf = (version: string): number[] => version.split(".").map(Number);
