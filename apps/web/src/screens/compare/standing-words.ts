/** “9 containers and 23 openings stand”; null where none does. */
export function standingWords({ containers, openings }: { containers: number; openings: number }): string | null {
  const counted = (count: number, one: string): string[] =>
    count === 0 ? [] : [`${count} ${one}${count === 1 ? "" : "s"}`];
  const words = [...counted(containers, "container"), ...counted(openings, "opening")].join(" and ");
  return words === "" ? null : `${words} ${containers + openings === 1 ? "stands" : "stand"}`;
}
