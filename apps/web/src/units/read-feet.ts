import { inchesPerFoot } from "@cornerway/schema";
import { readNumber } from "./read-number.ts";

/**
 * Feet and inches, in inches: 5'-3 1/2", 5 ft 3.5 in, 63.5", 1/4", 5'; after feet the inch sign may be left out, and inches
 * stay under twelve. Null where the text is none of these.
 */
export function readFeet(text: string): number | null {
  const [, sign = "", bare = ""] = /^([+-]?) ?(.*)$/.exec(plain(text)) ?? [];
  const inches = inchesOf(bare);
  return inches === null ? null : (sign === "-" ? -1 : 1) * inches;
}

const withFeet = /^(.*?) ?(?:'|ft\.?|feet|foot) ?-? ?(.*)$/i;
const inchSign = / ?(?:"|inches|inch|in\.?)$/i;

function inchesOf(text: string): number | null {
  const [, feetText, rest = ""] = withFeet.exec(text) ?? [];
  if (feetText === undefined) return inchSign.test(text) ? readInches(text.replace(inchSign, "")) : null;
  const feet = unsigned(feetText);
  if (feet === null || rest === "") return feet === null ? null : feet * inchesPerFoot;
  const inches = readInches(rest.replace(inchSign, ""));
  if (inches === null || inches >= inchesPerFoot || !Number.isInteger(feet)) return null;
  return feet * inchesPerFoot + inches;
}

/** "3", "3.5", "3,5", "1/2", "3 1/2"; shares of an inch below one. */
function readInches(text: string): number | null {
  const [, whole, over, under] = /^(?:(.*) )?(\d+)\/(\d+)$/.exec(text) ?? [];
  if (over === undefined || under === undefined) return unsigned(text);
  const before = whole === undefined ? 0 : unsigned(whole);
  const share = Number(over) / Number(under);
  return before !== null && Number.isInteger(before) && share < 1 ? before + share : null;
}

const unsigned = (text: string): number | null => (/^[+-]/.test(text) ? null : readNumber(text));

const signs: readonly (readonly [RegExp, string])[] = [
  [/[\u2009\u202f\u00a0]/g, " "],
  [/−/g, "-"],
  [/″|”|“|''/g, '"'],
  [/′|’|‘/g, "'"],
  [/⁄/g, "/"],
  [/½/g, " 1/2"],
  [/¼/g, " 1/4"],
  [/¾/g, " 3/4"],
  [/⅛/g, " 1/8"],
  [/⅜/g, " 3/8"],
  [/⅝/g, " 5/8"],
  [/⅞/g, " 7/8"],
  [/ +/g, " "],
];

const plain = (text: string): string => signs.reduce((now, [sign, by]) => now.replaceAll(sign, by), text).trim();
