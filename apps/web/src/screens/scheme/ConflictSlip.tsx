import type { Operation, Scheme } from "@cornerway/schema";
import type { Conflict } from "../../data/draft/draft-state.ts";
import { InSight } from "../../controls/InSight.tsx";
import { Command } from "../../controls/Command.tsx";
import { useUnits } from "../../units/use-units.ts";
import { Slip } from "../../sheet/Slip.tsx";
import { actSentence } from "../../wording/act-sentence.ts";
import { listOf } from "../../wording/list-of.ts";
import { namesIn, type NameOf } from "../../wording/name-of.ts";

export interface ConflictSlipProps {
  conflict: Conflict;
  scheme: Scheme;
  onAnswer: (answer: "mine" | "theirs") => void;
}

/** An act set aside: both versions in words, with the ghost on the drawing, and two answers. */
export const ConflictSlip = (props: ConflictSlipProps) => (
  <InSight key={props.conflict.act.id}>
    <BothVersions {...props} />
  </InSight>
);

function BothVersions({ conflict, scheme, onAnswer }: ConflictSlipProps) {
  const { act, theirs, why } = conflict;
  const units = useUnits();
  const nameOf = namesIn(scheme, [...act.operations, ...theirs.flatMap(({ operations }) => operations)]);
  const mine = actSentence(act.operations, [], nameOf, units);
  if (why !== null) return <NotTaken mine={mine} why={why} onAnswer={onAnswer} />;
  return (
    <Slip label="Two hands on one thing">
      <p>
        {whatChanged(conflict, nameOf)} changed by someone else first. Your move lies over it in pencil. Nothing is lost
        either way.
      </p>
      {theirs.map(({ draftNumber, by, operations }) => (
        <p key={draftNumber}>
          {by}: {actSentence(operations, [], nameOf, units)}.
        </p>
      ))}
      <p>You: {mine}.</p>
      <div className="twin-row">
        <Command next onPress={() => onAnswer("mine")}>
          Draw mine
        </Command>
        <Command onPress={() => onAnswer("theirs")}>Keep theirs</Command>
      </div>
    </Slip>
  );
}

/** The service would not take a move: it is kept as a ghost until it is drawn again or left out. */
const NotTaken = ({ mine, why, onAnswer }: Pick<ConflictSlipProps, "onAnswer"> & { mine: string; why: string }) => (
  <Slip label="A move was not taken in">
    <p>You: {mine}.</p>
    <p>{why}</p>
    <div className="twin-row">
      <Command next onPress={() => onAnswer("mine")}>
        Draw it again
      </Command>
      <Command onPress={() => onAnswer("theirs")}>Leave it out</Command>
    </div>
  </Slip>
);

/** "G1 was", "G1 and D2 were". */
function whatChanged({ act, elements }: Conflict, nameOf: NameOf): string {
  const things = [
    ...new Set(withoutFollowers(elements, act.operations).map((key) => nameOf(key.replace(/^tag:/, "")))),
  ];
  return `${listOf(things)} ${things.length === 1 ? "was" : "were"}`;
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
