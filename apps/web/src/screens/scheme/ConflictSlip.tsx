import type { Operation, Scheme } from "@cornerway/schema";
import type { Conflict } from "../../data/draft/draft-state.ts";
import { Command } from "../../controls/Command.tsx";
import { useUnits } from "../../units/use-units.ts";
import { Slip } from "../../sheet/Slip.tsx";
import { actSentence } from "../../wording/act-sentence.ts";
import { listOf } from "../../wording/list-of.ts";
import { namesIn } from "../../wording/name-of.ts";

export interface ConflictSlipProps {
  conflict: Conflict;
  scheme: Scheme;
  onAnswer: (answer: "mine" | "theirs") => void;
}

/** Two hands on one thing: both versions in words, with the ghost on the drawing, and two answers. */
export function ConflictSlip({ conflict: { act, elements, theirs }, scheme, onAnswer }: ConflictSlipProps) {
  const units = useUnits();
  const nameOf = namesIn(scheme, [...act.operations, ...theirs.flatMap(({ operations }) => operations)]);
  const things = [
    ...new Set(withoutFollowers(elements, act.operations).map((key) => nameOf(key.replace(/^tag:/, "")))),
  ];
  return (
    <Slip label="Two hands on one thing">
      <p>
        {listOf(things)} {things.length === 1 ? "was" : "were"} changed by someone else first. Your move lies over it in
        pencil. Nothing is lost either way.
      </p>
      {theirs.map(({ draftNumber, by, operations }) => (
        <p key={draftNumber}>
          {by}: {actSentence(operations, [], nameOf, units)}.
        </p>
      ))}
      <p>You: {actSentence(act.operations, [], nameOf, units)}.</p>
      <div className="twin-row">
        <Command next onPress={() => onAnswer("mine")}>
          Draw mine
        </Command>
        <Command onPress={() => onAnswer("theirs")}>Keep theirs</Command>
      </div>
    </Slip>
  );
}

/** Pads that only follow the unit are not named beside it. */
function withoutFollowers(elements: readonly string[], operations: readonly Operation[]): readonly string[] {
  const pads = new Set(
    operations.flatMap((operation) =>
      operation.kind === "pad.move" || operation.kind === "pad.remove" ? [operation.id] : [],
    ),
  );
  const leading = elements.filter((key) => !pads.has(key));
  return leading.length > 0 ? leading : elements;
}
