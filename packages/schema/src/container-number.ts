import { z } from "zod";

/**
 * Check digit of an owner code, category letter and serial number, ISO 6346 annex A: letters count from A = 10 on, without
 * multiples of 11; each character times two to the power of its place; the sum modulo 11, 10 counting as 0.
 */
export function checkDigit(tenCharacters: string): number {
  const sum = Array.from(tenCharacters).reduce((total, character, place) => total + valueOf(character) * 2 ** place, 0);
  return (sum % 11) % 10;
}

const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

function valueOf(character: string): number {
  const at = letters.indexOf(character);
  if (at < 0) return Number(character);
  // 11, 22 and 33 are left out
  return at + 10 + Math.floor((at + 9) / 10);
}

/** Identification of a freight container, ISO 6346: owner, category U, J or Z, six figures and the check digit. */
export const ContainerNumber = z
  .string()
  .transform((text) => text.toUpperCase().replaceAll(/[\s-]/g, ""))
  .pipe(
    z
      .string()
      .regex(
        /^[A-Z]{3}[UJZ][0-9]{7}$/,
        "three letters, U, J or Z, six figures and a check digit, such as CSQU 305438 3",
      )
      .refine((text) => Number(text[10]) === checkDigit(text.slice(0, 10)), {
        error: ({ input }) =>
          `the check digit does not fit; for the rest it would be ${checkDigit(String(input).slice(0, 10))}`,
      }),
  );

/** As it stands on the container: "CSQU 305438 3". */
export const containerNumberWords = (number: string): string =>
  `${number.slice(0, 4)} ${number.slice(4, 10)} ${number.slice(10)}`;
