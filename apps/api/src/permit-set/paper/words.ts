const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** A moment as a day, in UTC: 27 Nov 2026. */
export function day(moment: string): string {
  const at = new Date(moment);
  return `${at.getUTCDate()} ${months[at.getUTCMonth()] ?? ""} ${at.getUTCFullYear()}`;
}

/** A moment to the minute, in UTC: 27 Nov 2026, 12:05. */
export function minute(moment: string): string {
  const at = new Date(moment);
  const two = (value: number) => String(value).padStart(2, "0");
  return `${day(moment)}, ${two(at.getUTCHours())}:${two(at.getUTCMinutes())}`;
}

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
