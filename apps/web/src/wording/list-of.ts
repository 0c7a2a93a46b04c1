/** "D1", "D1 and D2", "D1, D2 and W1". */
export function listOf(names: readonly string[]): string {
  if (names.length < 2) return names[0] ?? "nothing";
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
