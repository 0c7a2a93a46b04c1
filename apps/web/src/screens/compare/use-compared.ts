import { compareSchemes, elementsOf, may, type Pair, type Revision, type SchemeComparison } from "@cornerway/schema";
import { useMemo } from "react";
import { useRevisionPremium } from "../../data/premium.ts";
import { useRoom } from "../../room/room-context.ts";
import { useUnits } from "../../units/use-units.ts";
import { namesIn } from "../../wording/name-of.ts";
import { comparedLines, eachSide, judgedOtherwise, type ComparedLine, type JudgedOtherwise } from "./compared-lines.ts";
import { wholeLines } from "./whole-lines.ts";
import { wholeFigures, type WholeFigure } from "./whole-figures.ts";

export interface Compared {
  comparison: SchemeComparison;
  lines: readonly ComparedLine[];
  otherwise: readonly (JudgedOtherwise & { name: string })[];
  /** How many stand in the later as they stood in the former. */
  unchanged: { containers: number; openings: number };
  whole: readonly WholeFigure[];
  /** True for readers of plain words: no force, no section. */
  plain: boolean;
  currency: string | null;
  /** Premium of the whole of both; null where it is not seen or not known. */
  total: Pair<number> | null;
  /** Whether each was assessed: without it no force is known. */
  checked: Pair<boolean>;
}

/** Everything that is said of two revisions, made once for each pair. */
export function useCompared(revisions: Pair<Revision>): Compared {
  const { project } = useRoom();
  const units = useUnits();
  const plain = !project.roles.some((role) => role !== "owner");
  const was = useRevisionPremium(project, revisions.before.letter).data?.premium ?? null;
  const is = useRevisionPremium(project, revisions.after.letter).data?.premium ?? null;
  return useMemo(() => {
    const { before, after } = revisions;
    const assessment = eachSide(revisions, ({ result }) => result);
    const premium = may(project.roles, "read-prices") ? { before: was, after: is } : { before: null, after: null };
    const comparison = compareSchemes(before.scheme, after.scheme);
    const [formerName, laterName] = [namesIn(before.scheme), namesIn(after.scheme)];
    const nameOf = (id: string) => (laterName(id) === id ? formerName(id) : laterName(id));
    const changed = new Set(comparison.elements.flatMap((change) => [change.id, ...change.with.map(({ id }) => id)]));
    const stayed = elementsOf(after.scheme)
      .map(({ id }) => id)
      .filter((id) => !changed.has(id));
    return {
      ...{ comparison, plain },
      lines: [
        ...comparedLines(comparison.elements, { assessment, premium }, { nameOf, units, plain }),
        ...wholeLines(comparison, revisions, units, plain),
      ],
      otherwise: judgedOtherwise(stayed, assessment).map((each) => ({ ...each, name: nameOf(each.id) })),
      unchanged: {
        containers: countIn(stayed, after.scheme.containers),
        openings: countIn(stayed, after.scheme.openings),
      },
      whole: wholeFigures(
        eachSide(revisions, ({ scheme }) => scheme),
        { assessment, premium },
        units,
        plain,
      ),
      currency: premium.after?.currency ?? null,
      total:
        premium.before === null || premium.after === null
          ? null
          : { before: premium.before.total, after: premium.after.total },
      checked: eachSide(assessment, (side) => side !== null),
    };
  }, [revisions, was, is, units, plain, project.roles]);
}

const countIn = (ids: readonly string[], elements: readonly { id: string }[]): number => {
  const among = new Set(ids);
  return elements.filter(({ id }) => among.has(id)).length;
};
