import type { Assessment, Mark, MarkKind, RemedyRefusal, Scheme } from "@cornerway/schema";
import { compareVerdicts, isWorse } from "../impact/compare-verdicts.ts";

/** What the load path says against a change; undefined where nothing does and strength has to say. */
export function screened(before: Assessment, after: Assessment, mark: Mark): RemedyRefusal | undefined {
  if (!isSettledByPath(mark, after)) return { kind: "does not settle it" };
  const worse = worsenedMarks(before, after).filter(({ id }) => id !== mark.id);
  return worse.length === 0 ? undefined : { kind: "worsens", markIds: worse.map(({ id }) => id) };
}

/** Marks that a change brings, or makes worse, that ask for something; what new steel always brings is not among them. */
export function worsenedMarks(before: Assessment, after: Assessment): Mark[] {
  const { appeared, worse, heavier } = compareVerdicts(before, after);
  const fallen = heavier
    .filter(({ after: { verdict } }) => isWorse("not checked", verdict))
    .map((turned) => turned.after);
  return [
    ...appeared.filter(({ fact }) => !comesWithSteel.has(fact.kind)),
    ...worse.map((turned) => turned.after),
    ...fallen,
  ];
}

/** Told of anything drawn; whether it holds is asked of strength. */
const comesWithSteel: ReadonlySet<MarkKind> = new Set<MarkKind>([
  "post-carries",
  "beam-carries",
  "borne-on-beam",
  "borne-on-rail",
  "borne-on-fittings",
  "below-not-settled",
  "opening-in-sheet",
  "wall-out",
  "tie-joins",
  "made-connection",
  // asked of strength, and answered there
  "overhang",
  "load-over-opening",
]);

/** Marks of which strength says whether they hold stay and are judged there; the others must go, or be met by what is drawn. */
function isSettledByPath(mark: Mark, { marks }: Assessment): boolean {
  const now = marks.find(({ id }) => id === mark.id);
  if (now === undefined) return true;
  if (now.fact.kind === "made-connection") return now.fact.drawn === now.fact.corners;
  if (now.verdict === "does not work" || now.verdict === "needs the engineer") return false;
  return answersWithStrength.has(now.fact.kind) || isWorse(now.verdict, mark.verdict);
}

const answersWithStrength: ReadonlySet<MarkKind> = new Set<MarkKind>([
  "load-over-opening",
  "opening-in-sheet",
  "wall-out",
  "overhang",
  "borne-on-rail",
]);

export type Screened = { readonly scheme: Scheme; readonly refusal: RemedyRefusal | undefined };
