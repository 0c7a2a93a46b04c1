import type { DifferentLine, Premium, PremiumLine } from "@cornerway/schema";

/** What makes up the difference of two premiums, line by line; the money of all lines is the difference of the totals. */
export function premiumDifference(before: Premium, after: Premium): DifferentLine[] {
  const [was, is] = [byKey(before.lines), byKey(after.lines)];
  return [...new Set([...was.keys(), ...is.keys()])].toSorted().flatMap((key) => {
    const [old, now] = [was.get(key) ?? null, is.get(key) ?? null];
    const line = now ?? old;
    const money = (now?.money ?? 0) - (old?.money ?? 0);
    if (line === null || (money === 0 && old?.quantity === now?.quantity)) return [];
    const { elementId, item, section } = line;
    return [{ elementId, item, section, before: old, after: now, money }];
  });
}

const byKey = (lines: readonly PremiumLine[]): Map<string, PremiumLine> =>
  new Map(lines.map((line) => [`${line.elementId} ${line.item} ${line.section ?? ""}`, line]));
