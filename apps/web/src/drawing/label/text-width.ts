/** Advance widths of the lettering face by kind of character, em; measured on weight 500, rounded up. */
const narrow = 0.33;
const digit = 0.64;
const capital = 0.72;
const small = 0.6;
const wide = 0.92;

/** Width of lettered text, px: an upper estimate, so that what does not overlap here does not overlap on screen. */
export function textWidthPx(text: string, sizePx: number, trackingEm = 0.03): number {
  let em = 0;
  for (const character of text) em += advance(character) + trackingEm;
  return em * sizePx;
}

function advance(character: string): number {
  if (".,:·'il1|! ".includes(character)) return narrow;
  if ("mMwW".includes(character)) return wide;
  if (character >= "0" && character <= "9") return digit;
  return character === character.toUpperCase() ? capital : small;
}
