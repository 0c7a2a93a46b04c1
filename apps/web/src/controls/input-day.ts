/** A day as date fields write it, local: 2027-03-11. */
export function inputDay(moment: string | number): string {
  const at = new Date(moment);
  const two = (number: number) => String(number).padStart(2, "0");
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** The last moment of a local day, RFC 3339. */
export const endOfDay = (day: string): string => new Date(`${day}T23:59:59.999`).toISOString();
