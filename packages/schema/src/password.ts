import { commonWords } from "./password-words.ts";

/** NIST SP 800-63B-4 section 3.1.1.2 asks for 15, or 8 beside a second factor; ASVS 5 V6.2.1 for 8, better 15. */
export const shortestPassword = 12;
export const longestPassword = 128;

/** Of what is left after everything that is guessed first is taken away. */
const fewestOwnLetters = 5;
const shortestTold = 3;

/**
 * Why a password will not do, as a sentence; null when it will. No rule about kinds of characters. `about` is what is
 * known of the person: name and address. Lengths count characters, not bytes.
 */
export function passwordFault(password: string, about: readonly string[] = []): string | null {
  const length = Array.from(password.normalize("NFC")).length;
  if (length < shortestPassword)
    return `A password has ${shortestPassword} characters or more; this one has ${length}.`;
  if (length > longestPassword) return `A password has ${longestPassword} characters at most; this one has ${length}.`;
  const plain = plainLetters(password);
  if (isWeak(withoutRepeats(plain))) return "It is one short piece over and over.";
  const own = about.flatMap(partsOf);
  if (isWeak(withoutWords(plain, own)) && own.some((word) => plain.includes(word)))
    return "It is mostly your own name or address.";
  const guessed = withoutWords(withoutRuns(plain), [...own, ...commonWords]);
  return isWeak(withoutRepeats(guessed)) ? "It is made of words and runs that are guessed first." : null;
}

const substitutes = new Map(Array.from("4@8301!$57").map((sign, at) => [sign, "aabeoiisst"[at] ?? ""]));

/** Lower case without blanks and signs, with figures and signs that stand for letters read as those letters. */
const plainLetters = (text: string): string =>
  Array.from(text.normalize("NFKC").toLowerCase())
    .filter((character) => /[\p{L}\p{N}@!$]/u.test(character))
    .join("");

const readAsLetters = (text: string): string =>
  Array.from(text)
    .map((sign) => substitutes.get(sign) ?? sign)
    .join("");

const isWeak = (left: string): boolean => new Set(left).size < fewestOwnLetters;

const partsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((part) => part.length >= shortestTold);

/** The shortest piece that, repeated, gives the whole; the whole when there is none. */
function withoutRepeats(text: string): string {
  for (let length = 1; length <= text.length / 2; length += 1) {
    const piece = text.slice(0, length);
    if (piece.repeat(Math.ceil(text.length / length)).startsWith(text)) return piece;
  }
  return text;
}

const rows = ["abcdefghijklmnopqrstuvwxyz", "01234567890", "qwertyuiop", "asdfghjkl", "zxcvbnm", "qwertzuiop"];
const runsFrom = rows.flatMap((row) => [row, Array.from(row).reverse().join("")]);
const shortestRun = 3;

/** Takes away runs along the alphabet, the figures and the rows of a keyboard, and one character three times or more. */
function withoutRuns(text: string): string {
  let left = "";
  for (let at = 0; at < text.length;) {
    const length = Math.max(runAt(text, at), sameAt(text, at));
    if (length < shortestRun) left += text[at];
    at += length < shortestRun ? 1 : length;
  }
  return left;
}

function runAt(text: string, at: number): number {
  let longest = 1;
  for (const row of runsFrom) {
    const from = row.indexOf(text[at] ?? "");
    let length = 1;
    while (from >= 0 && at + length < text.length && row[from + length] === text[at + length]) length += 1;
    longest = Math.max(longest, length);
  }
  return longest;
}

function sameAt(text: string, at: number): number {
  let length = 1;
  while (text[at + length] === text[at]) length += 1;
  return length;
}

/** Takes away words, the longest first, as written and with figures read as letters; then figures alone, such as a year. */
function withoutWords(text: string, words: readonly string[]): string {
  const longestFirst = [...words].sort((a, b) => b.length - a.length);
  const left = (start: string) => longestFirst.reduce((rest, word) => rest.replaceAll(word, ""), start);
  const [asWritten, asRead] = [left(text), left(readAsLetters(text))];
  return (asRead.length < asWritten.length ? asRead : asWritten).replaceAll(/[\p{N}@!$]/gu, "");
}
