/** The element Tab enters a tree at: the chosen one where the view shows it, else the last one drawn. */
export const entryElement = (shown: readonly string[], selectedId: string | null | undefined): string | null =>
  shown.find((id) => id === selectedId) ?? shown.at(-1) ?? null;
