import {
  assessedWith,
  hasRemedies,
  hazardRefusalText,
  knownRun,
  remedies,
  strength,
  type KnownRun,
} from "@cornerway/engine";
import {
  applyOperations,
  demoCostBook,
  readScheme,
  schemeFaults,
  type Mark,
  type Operation,
  type Scheme,
} from "@cornerway/schema";
import { badInput, type Answer } from "./answer.ts";
import { marksText, remediesText } from "./remedies-text.ts";

/** The ways to settle one mark of a scheme, priced by the book for show; without a mark, the marks that something is known for. */
export function remediesCommand(
  input: { readonly name: string; readonly value: unknown },
  markId: string | undefined,
  asJson: boolean,
): Answer {
  const read = readScheme(input.value);
  if (!read.ok) return badInput(input.name, read.fields);
  const faults = schemeFaults(read.scheme);
  if (faults.length > 0) return badInput(input.name, faults);
  if (read.scheme.containers.length === 0)
    return badInput(input.name, [{ pointer: "/containers", detail: "there is no container, so there is no mark" }]);
  const judged = strength(read.scheme);
  const marks = assessedWith(read.scheme, judged).assessment.marks.filter(asksForMore);
  if (markId === undefined) return said(asJson ? marks : marksText(read.scheme, marks), asJson);
  if (!marks.some(({ id }) => id === markId))
    return badInput(input.name, [{ pointer: "", detail: `no mark ${markId} that something is known for` }]);
  return searched({ ...input, known: knownRun(read.scheme, judged) }, read.scheme, markId, asJson);
}

const asksForMore = ({ verdict, fact: { kind } }: Mark): boolean =>
  verdict !== "works as built" && verdict !== "works with steel" && hasRemedies(kind);

function searched(
  { name, known }: { readonly name: string; readonly known: KnownRun },
  scheme: Scheme,
  markId: string,
  asJson: boolean,
): Answer {
  const search = remedies(scheme, markId, demoCostBook, draw, known);
  for (;;) {
    const step = search.next();
    if (step.done !== true) continue;
    if (step.value.accepted) return said(asJson ? step.value.list : remediesText(scheme, step.value.list), asJson);
    return badInput(
      name,
      step.value.refusals.map((refusal) => ({
        pointer: `/basis/hazards/${refusal.hazard}`,
        detail: hazardRefusalText(refusal),
      })),
    );
  }
}

const said = (what: unknown, asJson: boolean): Answer => ({
  out: asJson ? `${JSON.stringify(what, null, 2)}\n` : String(what),
  err: "",
  code: 0,
});

function draw(scheme: Scheme, operations: readonly Operation[]): Scheme | undefined {
  const applied = applyOperations(scheme, [...operations]);
  return applied.ok ? applied.scheme : undefined;
}
