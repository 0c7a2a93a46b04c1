import { z } from "zod";

/** Length or coordinate in integer micrometres (1 mm = 1000 µm); sites up to ±10 km. */
export const LengthUm = z.int().min(-10_000_000_000).max(10_000_000_000).meta({ id: "LengthUm" });

/** A length that cannot be zero or negative, in integer micrometres. */
export const PositiveLengthUm = z.int().min(1).max(10_000_000_000).meta({ id: "PositiveLengthUm" });

/** Angle in integer thousandths of a degree, anticlockwise seen from above, 0 ≤ angle < 360 000. */
export const AngleMdeg = z.int().min(0).max(359_999).meta({ id: "AngleMdeg" });

/** Pressure in integer pascals (1 kPa = 1000 Pa). */
export const PressurePa = z.int().min(0).max(1_000_000).meta({ id: "PressurePa" });

export const umPerMm = 1000;

/** Millimetres to the integer micrometres the scheme stores, rounded half away from zero. */
export const mmToUm = (lengthMm: number): number => Math.sign(lengthMm) * Math.round(Math.abs(lengthMm) * umPerMm) + 0;
