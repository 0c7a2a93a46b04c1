/** Units a person reads lengths and forces in; they replace each other and are never shown side by side. */
export const unitSystems = ["SI", "US"] as const;
export type UnitSystem = (typeof unitSystems)[number];

/** Exact by the international yard and pound of 1959. */
export const mmPerInch = 25.4;
export const inchesPerFoot = 12;
/** One pound-force in newtons: 0.45359237 kg under the standard gravity of 9.80665 m/s², both exact. */
export const newtonsPerPound = 4.4482216152605;
/** Feet and inches are written to the sixteenth of an inch. */
export const sixteenthsPerInch = 16;

const knPerKip = newtonsPerPound;
const knmPerKipFoot = (newtonsPerPound * mmPerInch * inchesPerFoot) / 1000;

/** How a sentence writes its numbers. */
export type Figures = {
  /** Lengths of a drawing: 3.00 m; 9'-10 1/8". */
  readonly length: (lengthMm: number) => string;
  /** Small lengths, in SI with a tenth of a millimetre only where there is one: 18.5 mm, 6 mm; 1/4". */
  readonly small: (lengthMm: number) => string;
  /** Lengths for readers of plain words: 3.0 metres; 9.8 feet. */
  readonly inWords: (lengthMm: number) => string;
  /** Forces for the drawing: 66 kN; 14.8 kip. */
  readonly force: (forceKn: number) => string;
  /** Forces for the engineer: 65.8 kN; 14.79 kip. */
  readonly forceExact: (forceKn: number) => string;
  /** Moments for the engineer: 204.0 kN m; 150.5 kip-ft. */
  readonly moment: (momentKnm: number) => string;
};

const metric: Figures = {
  length: (lengthMm) => `${fixed(lengthMm / 1000, 2)} m`,
  small: (lengthMm) => `${fixed(lengthMm, 1).replace(/\.0$/, "")} mm`,
  inWords: (lengthMm) => `${fixed(lengthMm / 1000, 1)} metres`,
  force: (forceKn) => `${fixed(forceKn, 0)} kN`,
  forceExact: (forceKn) => `${fixed(forceKn, 1)} kN`,
  moment: (momentKnm) => `${fixed(momentKnm, 1)} kN m`,
};

const customary: Figures = {
  length: (lengthMm) => feetAndInches(lengthMm),
  small: (lengthMm) => feetAndInches(lengthMm),
  inWords: (lengthMm) => `${fixed(lengthMm / mmPerInch / inchesPerFoot, 1)} feet`,
  force: (forceKn) => `${fixed(forceKn / knPerKip, 1)} kip`,
  forceExact: (forceKn) => `${fixed(forceKn / knPerKip, 2)} kip`,
  moment: (momentKnm) => `${fixed(momentKnm / knmPerKipFoot, 1)} kip-ft`,
};

const figuresByUnits: Readonly<Record<UnitSystem, Figures>> = { SI: metric, US: customary };

/** The figures of a unit system. */
export const figuresIn = (units: UnitSystem): Figures => figuresByUnits[units];

/** Forces to the tenth of a kilonewton, where no reader has chosen units. */
export const kilonewtonsExact = metric.forceExact;

/** A length in feet and inches to the nearest sixteenth: 5'-3 1/2"; 19'-0 1/16"; under a foot 3 1/2"; 0" for none. */
export function feetAndInches(lengthMm: number): string {
  const sixteenths = Math.round((Math.abs(lengthMm) / mmPerInch) * sixteenthsPerInch);
  const perFoot = inchesPerFoot * sixteenthsPerInch;
  const feet = Math.floor(sixteenths / perFoot);
  const inches = inchText(sixteenths % perFoot, feet > 0);
  const sign = lengthMm < 0 && sixteenths > 0 ? "−" : "";
  return `${sign}${feet === 0 ? "" : `${feet}'-`}${inches}"`;
}

/** After feet the whole inches are written even where there are none. */
function inchText(sixteenths: number, afterFeet: boolean): string {
  const whole = Math.floor(sixteenths / sixteenthsPerInch);
  const rest = sixteenths % sixteenthsPerInch;
  if (rest === 0) return `${whole}`;
  const shared = [8, 4, 2].find((each) => rest % each === 0) ?? 1;
  const fraction = `${rest / shared}/${sixteenthsPerInch / shared}`;
  return whole === 0 && !afterFeet ? fraction : `${whole} ${fraction}`;
}

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
