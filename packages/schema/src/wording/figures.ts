/** Lengths of a drawing in metres with two figures after the point: 3.00 m. */
export const metres = (lengthMm: number): string => `${fixed(lengthMm / 1000, 2)} m`;

/** Small lengths in millimetres, with a tenth only where there is one: 18.5 mm, 6 mm. */
export const millimetres = (lengthMm: number): string => `${tenths(lengthMm)} mm`;

/** Lengths for readers of plain words: 3.0 metres. */
export const metresInWords = (lengthMm: number): string => `${fixed(lengthMm / 1000, 1)} metres`;

/** Forces to the whole kilonewton, for the drawing: 66 kN. */
export const kilonewtons = (forceKn: number): string => `${fixed(forceKn, 0)} kN`;

/** Forces to the tenth, for the engineer: 65.8 kN. */
export const kilonewtonsExact = (forceKn: number): string => `${fixed(forceKn, 1)} kN`;

/** Moments to the tenth, for the engineer: 204.0 kN m. */
export const kilonewtonMetres = (momentKnm: number): string => `${fixed(momentKnm, 1)} kN m`;

export const percent = (share: number): string => `${fixed(share * 100, 0)} %`;

/** Names in a row: G1; G1 and G2; G1, G2 and G3. */
export function inRow(names: readonly string[]): string {
  const last = names.at(-1);
  if (last === undefined) return "";
  return names.length === 1 ? last : `${names.slice(0, -1).join(", ")} and ${last}`;
}

const fixed = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  return Number(text) === 0 ? (0).toFixed(digits) : text;
};

const tenths = (value: number): string => fixed(value, 1).replace(/\.0$/, "");
