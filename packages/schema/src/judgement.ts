import type { Assessment } from "./assessment.ts";
import { canonicalJson } from "./canonical-json.ts";
import { digestOf } from "./canonical.ts";
import { isAsDrawnBy } from "./is-as-drawn-by.ts";
import { standingOf, wholeStandingOf, type Judged } from "./cover.ts";
import type { DecisionShown } from "./decision.ts";
import type { AnsweredStep, QuestionNow } from "./question.ts";
import type { ChangeRequest } from "./review.ts";
import type { Scheme } from "./scheme.ts";
import type { SealState } from "./seal.ts";
import type { StampNow } from "./stamp-now.ts";

/** What people give on a drawing and an edit can undo. */
export const judgementKinds = [
  ...(["answer", "stamp", "check", "disposition", "confirmation"] as const),
  ...(["decision", "request taken in", "issue for seal"] as const),
] as const;
export type JudgementKind = (typeof judgementKinds)[number];

/** Names one judgement: what it is, its number among its kind or the revision it is on, and the element; null for the whole. */
export interface JudgementOf {
  kind: JudgementKind;
  id: string;
  /** Its number among its kind; null for stamps and decisions, which have none. */
  number: number | null;
  revision: string | null;
  elementId: string | null;
}

/** A judgement, and whether what it covers is on a drawing as it was given. */
export interface Judgement {
  of: JudgementOf;
  stands: (drawn: { scheme: Scheme; result: Assessment }) => boolean;
}

/** What a project holds of judgements. Absent where whoever asks may not see them. */
export interface Given {
  questions?: readonly QuestionNow[];
  stamps?: readonly StampNow[];
  seal?: Pick<SealState, "checks" | "dispositions" | "confirmations" | "issues">;
  decisions?: readonly DecisionShown[];
  requests?: readonly ChangeRequest[];
}

/**
 * Judgements that stand on the newest revision, each with what it is held against: the content it covers there. `newest` and
 * every drawing asked about are assessed in one scope, whichever that is.
 */
export function standingJudgements(given: Given, newest: Judged & { result: Assessment }): Judgement[] {
  const against = { ...newest, digest: digestOf(newest.scheme) };
  return [
    ...(given.questions ?? []).flatMap((question) => answerGiven(question, against)),
    ...(given.stamps ?? []).filter(standsNow).map(({ stamp }) => {
      const of = { kind: "stamp", id: stamp.id, number: null, revision: stamp.revision } as const;
      return onElement({ ...of, elementId: stamp.elementId ?? null }, against);
    }),
    ...(given.seal?.checks ?? [])
      .filter(standsNow)
      .map(({ check: { id, number, revision } }) =>
        onElement({ kind: "check", id, number, revision, elementId: null }, against),
      ),
    ...(given.seal?.issues ?? [])
      .filter(standsNow)
      .map(({ issue: { id, number, revision } }) =>
        onElement({ kind: "issue for seal", id, number, revision, elementId: null }, against),
      ),
    ...(given.seal?.dispositions ?? []).filter(({ stands }) => stands).flatMap((each) => onMark(each, against)),
    ...(given.seal?.confirmations ?? []).map(({ id, number }) => ({
      of: { kind: "confirmation" as const, id, number, revision: null, elementId: null },
      // The words of a value name document and edition: under another edition none of them is rested on.
      stands: ({ scheme }: { scheme: Scheme }) => scheme.site.edition === newest.scheme.site.edition,
    })),
    ...(given.decisions ?? [])
      .filter(({ latest, stale }) => latest && stale.length === 0)
      .map(({ decision: { id, revision } }) => ({
        of: { kind: "decision" as const, id, number: null, revision, elementId: null },
        stands: ({ scheme }: { scheme: Scheme }) => digestOf(scheme) === against.digest,
      })),
    ...(given.requests ?? [])
      .filter(({ state }) => state === "taken in")
      .map(({ id, number, revision, operations }) => ({
        of: { kind: "request taken in" as const, id, number, revision, elementId: null },
        stands: ({ scheme }: { scheme: Scheme }) => operations.every((operation) => isAsDrawnBy(scheme, operation)),
      })),
  ];
}

type Against = Judged & { result: Assessment };

const standsNow = ({ standing }: { standing: { state: string } }): boolean => standing.state !== "stale";

function answerGiven({ id, number, elementId, steps, state }: QuestionNow, against: Against): Judgement[] {
  const answer = steps.findLast((step): step is AnsweredStep => step.step === "answered");
  if (answer === undefined || state !== "answered") return [];
  return [onElement({ kind: "answer", id, number, revision: answer.revision, elementId }, against)];
}

const onElement = (of: JudgementOf, against: Against): Judgement => ({
  of,
  stands: (drawn) => {
    const asked = { letter: "draft", ...drawn };
    const standing = of.elementId === null ? wholeStandingOf(against, asked) : standingOf(of.elementId, against, asked);
    return standing.state === "stands";
  },
});

/** A disposition stands while the very mark is there as it was, and nothing that any of its elements covers has changed. */
function onMark({ disposition }: SealState["dispositions"][number], against: Against): Judgement[] {
  const { id, number, revision, markId } = disposition;
  const markIn = ({ marks }: Assessment) => marks.find((mark) => mark.id === markId);
  const mark = markIn(against.result);
  // A mark of strength is not in an answer on the load path alone: then the elements it names are not known here.
  const elements = mark?.elements ?? [];
  const of = { kind: "disposition" as const, id, number, revision, elementId: elements[0] ?? null };
  const each =
    elements.length === 0
      ? [onElement(of, against)]
      : elements.map((elementId) => onElement({ ...of, elementId }, against));
  return [
    {
      of,
      stands: (drawn) => same(mark, markIn(drawn.result)) && each.every(({ stands }) => stands(drawn)),
    },
  ];
}

const same = (one: unknown, other: unknown): boolean => textOf(one) === textOf(other);
const textOf = (value: unknown): string => (value === undefined ? "" : canonicalJson(value));
