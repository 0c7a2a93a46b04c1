/** Exact by the international yard and pound of 1959, and the standard acceleration of gravity. */
const newtonsPerPound = 4.4482216152605;
const mmPerInch = 25.4;

/** US units of numbers that are stored in SI: `each` is what one of them is, in the unit stored. */
export const usUnits = {
  /** Of m/s. */
  mph: { unit: "mph", each: 0.44704 },
  /** Of m. */
  ft: { unit: "ft", each: 0.3048 },
  /** Of MPa. */
  psi: { unit: "psi", each: newtonsPerPound / (mmPerInch * mmPerInch) },
  /** Of MPa. */
  ksi: { unit: "ksi", each: (1000 * newtonsPerPound) / (mmPerInch * mmPerInch) },
  /** Of N/mm. */
  kipPerInch: { unit: "kip/in", each: (1000 * newtonsPerPound) / mmPerInch },
  /** Of kN/m³. */
  pci: { unit: "pci", each: (newtonsPerPound / mmPerInch / mmPerInch / mmPerInch) * 1_000_000 },
} as const;
