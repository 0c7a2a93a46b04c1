import { newUuid } from "../../tools/new-uuid.ts";
import type { Note, Revision } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { useWriteNote } from "../../data/note.ts";
import type { UnplacedNote } from "../../notes/placed-note.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { Slip } from "../../sheet/Slip.tsx";
import { namesIn } from "../../wording/name-of.ts";

export interface NoteSlipProps {
  revision: Revision;
  elementId: string;
  /** The note in the margin that is being answered, when one was chosen. */
  chosenNote: UnplacedNote | null;
  notes: readonly Note[];
}

/** Writing on the chosen element, or on the mark of the chosen note. */
export function NoteSlip({ revision, elementId, chosenNote, notes }: NoteSlipProps) {
  const { project, say } = useRoom();
  const write = useWriteNote(project.id);
  const [text, setText] = useState("");
  // One text, one id: pressed again after an answer that was lost, it is the same note.
  const [id, renewId] = useState(newUuid);
  const retell = (next: string) => {
    setText(next);
    renewId(newUuid());
  };
  const why = whyNot(project, "write-note");
  const name = namesIn(revision.scheme)(elementId);
  const answered = notes.find(({ id }) => id === chosenNote?.comments[0]?.id);
  const dispatch = () =>
    write.mutate(
      {
        id,
        elementId,
        markId: chosenNote?.markIds[0] ?? null,
        revision: revision.letter,
        answers: answered === undefined ? null : (answered.answers ?? answered.id),
        text: text.trim(),
      },
      {
        onSuccess: () => {
          retell("");
          say(`Note written on ${name}.`);
        },
      },
    );
  return (
    <Slip
      label={chosenNote?.verdict == null ? `Write on ${name}` : `Answer the note on ${name}`}
      hand={project.roles[0]}
    >
      <PersonField label="In your own words" fault={write.isError ? write.error.message : undefined}>
        {(bound) => (
          <textarea
            {...bound}
            rows={3}
            maxLength={4000}
            value={text}
            onChange={(event) => retell(event.target.value)}
          />
        )}
      </PersonField>
      <Command onPress={dispatch} asleepBecause={why ?? whyNotYet(text, write.isPending)}>
        {`Write it on ${name}`}
      </Command>
    </Slip>
  );
}

function whyNotYet(text: string, onItsWay: boolean): string | undefined {
  if (onItsWay) return "It is on its way.";
  return text.trim() === "" ? "Nothing is written yet." : undefined;
}
