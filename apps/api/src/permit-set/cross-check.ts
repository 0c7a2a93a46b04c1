import type { Figure } from "./figure.ts";

export type Disagreement = {
  about: string;
  quantity: string;
  said: { page: string; from: Figure["from"]; value: number }[];
};

/** Half of what is printed last: a millimetre on drawings, a tenth of a kilonewton. */
const withinMm = 0.5;
const withinKn = 0.05;

/** Which parts of the set must tell a quantity: one of them missing is a disagreement as well. */
const toldBy: Readonly<Record<string, readonly Figure["from"][]>> = {
  "opening width": ["drawing", "schedule"],
  "opening height": ["drawing", "schedule"],
  "opening offset": ["drawing", "schedule"],
  "opening sill": ["drawing", "schedule"],
  "post height": ["drawing", "schedule"],
  "post force, kN": ["drawing", "schedule", "calculation"],
  "reaction, kN": ["drawing", "calculation"],
  "weight, kN": ["drawing", "calculation"],
  "pad length": ["drawing", "schedule"],
  "pad width": ["drawing", "schedule"],
};

/** Every quantity that drawings, schedules and calculations do not tell alike. */
export function disagreements(figures: readonly Figure[]): Disagreement[] {
  const groups = new Map<string, Figure[]>();
  for (const figure of figures) {
    const key = `${figure.about}|${figure.quantity}`;
    groups.set(key, [...(groups.get(key) ?? []), figure]);
  }
  return [...groups.values()].flatMap((told) => {
    const [first] = told;
    if (first === undefined) return [];
    const { about, quantity } = first;
    const missing = (toldBy[quantity] ?? []).some((from) => !told.some((figure) => figure.from === from));
    const apart = Math.max(...told.map(({ value }) => value)) - Math.min(...told.map(({ value }) => value));
    const allowed = quantity.endsWith("kN") ? withinKn : withinMm;
    if (!missing && apart <= allowed) return [];
    return [{ about, quantity, said: told.map(({ page, from, value }) => ({ page, from, value })) }];
  });
}

/** One line for people: which number, and what each page says. */
export const disagreementText = ({ about, quantity, said }: Disagreement): string =>
  `${about}, ${quantity}: ${said.map(({ page, from, value }) => `${from} ${page} says ${value}`).join("; ")}`;
