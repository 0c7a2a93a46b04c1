/**
 * A number as people type it, or null. One mark alone, comma or point, is the decimal mark. With both kinds, or one kind
 * more than once, the last kind to appear once is the decimal mark and the others stand before groups of three; spaces
 * may do so too. `groupsAtComma`: where the unit is so small that nobody writes thousandths of it, a comma before exactly
 * three figures stands before a group: "1,613 mm" is one thousand six hundred and thirteen.
 */
export function readNumber(text: string, { groupsAtComma = false } = {}): number | null {
  const signed = /^([+-]?)\s*(.+)$/.exec(text.trim().replaceAll(anySpace, " ").replace("−", "-"));
  const [, sign = "", digits = ""] = signed ?? [];
  const plain = plainDigits(digits, groupsAtComma);
  return plain === null ? null : (sign === "-" ? -1 : 1) * Number(plain);
}

/** Spaces that stand between groups: thin, narrow, fixed. */
const anySpace = /[\u2009\u202f\u00a0]/g;

function plainDigits(text: string, groupsAtComma: boolean): string | null {
  const marks = text.replaceAll(/[\d ]/g, "");
  if (!/^[.,]*$/.test(marks)) return null;
  const decimal = decimalMark(text, marks, groupsAtComma);
  const parts = decimal === null ? [text] : text.split(decimal);
  const [whole = "", fraction = ""] = parts;
  if (parts.length > 2 || !/^\d*$/.test(fraction) || whole + fraction === "") return null;
  const ungrouped = ungroup(whole);
  return ungrouped === null ? null : `${ungrouped || "0"}.${fraction || "0"}`;
}

function decimalMark(text: string, marks: string, groupsAtComma: boolean): string | null {
  const last = marks.at(-1) ?? null;
  if (last === null) return null;
  if (marks.length === 1) return groupsAtComma && /^\d{1,3},\d{3}$/.test(text) ? null : last;
  return marks.indexOf(last) === marks.length - 1 ? last : null;
}

/** Figures without what stands between their groups; null where the groups are not of three. */
function ungroup(text: string): string | null {
  if (/^\d*$/.test(text)) return text;
  const separator = /[ .,]/.exec(text)?.[0] ?? "";
  const groups = text.split(separator);
  const [first = "", ...rest] = groups;
  const well = /^\d{1,3}$/.test(first) && rest.every((group) => /^\d{3}$/.test(group));
  return well ? groups.join("") : null;
}
