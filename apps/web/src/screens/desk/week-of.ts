/** One day of the week up to today, and how many entries it has. */
export type WeekDay = { label: string; count: number; today: boolean };

const named = new Intl.DateTimeFormat("en-GB", { weekday: "short", day: "numeric" });
const dayMs = 24 * 60 * 60 * 1000;
const daysShown = 7;

/** The last seven days by the reader's clock, oldest first, with the moments that fall on each. */
export function weekOf(moments: readonly string[], now: number): WeekDay[] {
  const dayOf = (at: number) => new Date(at).toDateString();
  const counts = new Map<string, number>();
  for (const moment of moments) {
    const day = dayOf(Date.parse(moment));
    counts.set(day, (counts.get(day) ?? 0) + 1);
  }
  return Array.from({ length: daysShown }, (_, back) => now - (daysShown - 1 - back) * dayMs).map((at) => ({
    label: named.format(at).replace(",", ""),
    count: counts.get(dayOf(at)) ?? 0,
    today: dayOf(at) === dayOf(now),
  }));
}
