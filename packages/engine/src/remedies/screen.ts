import type { Assessment, Mark, MarkKind, RemedyRefusal } from "@cornerway/schema";
import { compareVerdicts, isWorse } from "../impact/compare-verdicts.ts";

/**
 * What the load path says against a change; undefined where nothing does and strength has to say. `changed` are the elements it
 * sets or changes.
 */
export function screened(
  before: Assessment,
  after: Assessment,
  mark: Mark,
  changed: ReadonlySet<string>,
): RemedyRefusal | undefined {
  if (!isSettledByPath(mark, after)) return { kind: "does not settle it" };
  const worse = worsenedMarks(before, after).filter((one) => one.id !== mark.id && !isInItsOpening(one, mark, changed));
  return worse.length === 0 ? undefined : { kind: "worsens", markIds: worse.map(({ id }) => id) };
}

/** A post that parts the very opening in question is seen and counted as width lost; in another opening it is in the way. */
const isInItsOpening = ({ fact, elements: [, parted = ""] }: Mark, mark: Mark, changed: ReadonlySet<string>): boolean =>
  fact.kind === "post-through-opening" && (mark.elements.includes(parted) || changed.has(parted));

/** Marks that a change brings, or makes worse, that ask for something; what new steel always brings is not among them. */
export function worsenedMarks(before: Assessment, after: Assessment): Mark[] {
  const { appeared, worse, heavier } = compareVerdicts(before, after);
  const fallen = heavier
    .filter(({ after: { verdict } }) => isWorse("not checked", verdict))
    .map((turned) => turned.after);
  return [...appeared.filter((mark) => !isOfSteel(mark)), ...worse.map((turned) => turned.after), ...fallen];
}

/** A post in a wall stands on the rail beneath it, which a post below holds up: whether that does is asked of strength. */
const isOfSteel = ({ fact, verdict }: Mark): boolean =>
  comesWithSteel.has(fact.kind) || (fact.kind === "post-without-ground" && verdict === "not checked");

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
