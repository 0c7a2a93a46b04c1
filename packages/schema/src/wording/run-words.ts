/**
 * A run as people say it: what acts, then the sum it is of. Cases keep the names the engine gives them; elements in them are
 * to be put in tags first or after, they pass through untouched.
 */
export function runWords(run: string): string {
  const colon = run.indexOf(": ");
  if (colon === -1) return run;
  const cases = run
    .slice(colon + 2)
    .split(", ")
    .map(caseWords);
  return `${capital(cases.join(", "))} (${run.slice(0, colon)})`;
}

/** One action case in plain words. */
export function caseWords(name: string): string {
  for (const [pattern, words] of known) {
    const found = pattern.exec(name);
    if (found !== null) return words.replaceAll(/\$(\d)/g, (_, at: string) => found[Number(at)] ?? "");
  }
  return name;
}

const known: readonly (readonly [RegExp, string])[] = [
  [/^D most$/, "dead load at its heaviest"],
  [/^D least$/, "dead load at its least"],
  [/^D bare$/, "units bare"],
  [/^L everywhere$/, "every floor loaded"],
  [/^L every other unit$/, "every other unit loaded"],
  [/^L the other units$/, "the other units loaded"],
  [/^L overhangs$/, "overhangs loaded"],
  [/^L spans$/, "floors between bearings loaded"],
  [/^L unit (.+)$/, "only $1 loaded"],
  [/^L overhang (.+)$/, "only the overhang of $1 loaded"],
  [/^Lr everywhere$/, "roofs loaded"],
  [/^S uniform$/, "snow even"],
  [/^S drift$/, "snow drifted"],
  [/^S entered$/, "snow as entered"],
  [/^T (.+) low$/, "$1 built low"],
  [/^T (.+) high$/, "$1 built high"],
  [/^T (.+) settled$/, "$1 settled"],
  [/^T (.+) as built$/, "$1 as built"],
  [/^N ([+-])([xy])$/, "leaning along $1$2"],
  [/^W least ([+-][xy])(.*)$/, "least wind along $1$2"],
  [/^W(\d) ([+-][xy])(.*)$/, "wind along $2$3, its case $1"],
  [/^E ([+-][xy])(.*)$/, "earthquake along $1$2"],
];

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** True where a support settles, or stands high or low, in a run. */
export const movesSupport = (run: string): boolean => /[:,] T /.test(run);
