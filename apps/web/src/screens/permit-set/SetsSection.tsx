import type { PermitSetRun } from "@cornerway/schema";
import { useState } from "react";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { Command } from "../../controls/Command.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { setFile, useAskForSet, useSets, useStopSet } from "../../data/permit-set.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";
import { useUnits } from "../../units/use-units.ts";

/** Has the set of the last revision printed, and lists those that were. */
export function SetsSection() {
  const { project } = useRoom();
  const sets = useSets(project.id);
  if (sets.isPending) return <Ruled label="Fetching the sets" />;
  if (sets.data === undefined) return <Trouble error={sets.error} again={() => void sets.refetch()} />;
  return (
    <section aria-labelledby="sets-printed">
      <h2 className="caption" id="sets-printed">
        The printed set
      </h2>
      <p>
        Drawings, schedules and calculations of one revision, with the record up to its last entry. Nothing is printed
        where they do not tell a number alike. Every page says PRELIMINARY until the engineer issues for seal.
      </p>
      <AskForm />
      {sets.data.length === 0 ? <p>No set was printed yet.</p> : null}
      <ol className="set-list">
        {sets.data.map((set) => (
          <SetLines key={set.id} set={set} />
        ))}
      </ol>
    </section>
  );
}

function AskForm() {
  const { project, say } = useRoom();
  const ask = useAskForSet(project.id);
  const units = useUnits();
  const [id, renew] = useState(newUuid);
  const letter = project.revision;
  const because = whyNot(project, "print-set") ?? (letter === null ? "No revision was sent yet." : undefined);
  const press = () => {
    if (letter === null) return;
    ask.mutate(
      { id, letter, units },
      {
        onSuccess: () => {
          renew(newUuid());
          say(`The set of revision ${letter} is being printed.`);
        },
      },
    );
  };
  return (
    <div className="set-acts">
      <Command next onPress={press} asleepBecause={because}>
        {letter === null ? "Print the permit set" : `Print the permit set of revision ${letter}`}
      </Command>
      <p className="set-paper">
        {units === "US" ? "17 × 11 in drawings, letter calculations" : "A3 drawings, A4 calculations"}, in your units.
      </p>
      <Refused error={ask.error} />
    </div>
  );
}

function SetLines({ set }: { set: PermitSetRun }) {
  const { project } = useRoom();
  const stop = useStopSet(project.id);
  const { id, letter, units, upTo, state, askedBy, askedAt, setDigest, why } = set;
  return (
    <li>
      <p>
        <b>Revision {letter}</b>, record to entry {upTo}, {units === "US" ? "US units" : "SI"}. Asked for by{" "}
        {askedBy.name}, {dayAndTimeOf(askedAt)}.
      </p>
      <p role="status">{stateWords(set)}</p>
      {why === null || state === "stopped" ? null : <pre className="set-why">{why}</pre>}
      {setDigest === null ? null : <code className="digest">{setDigest.match(/.{4}/g)?.join(" ")}</code>}
      {state === "done" ? (
        <a className="command" href={setFile(project.id, id)} download>
          Take the PDF of revision {letter}
        </a>
      ) : null}
      {state === "waiting" && whyNot(project, "print-set") === undefined ? (
        <Command quiet onPress={() => stop.mutate(id)}>
          Stop printing
        </Command>
      ) : null}
      <Refused error={stop.error} />
    </li>
  );
}

function stateWords({ state, pages, leftMs, bytes, why }: PermitSetRun): string {
  switch (state) {
    case "waiting":
      if (pages.of === 0) return "It is being laid out.";
      return `${pages.done} of ${pages.of} pages${leftMs === null ? "" : `, about ${Math.ceil(leftMs / 1000)} s to go`}.`;
    case "done":
      return `${pages.of} pages, ${((bytes ?? 0) / 1_000_000).toFixed(1)} MB.`;
    case "refused":
      return "Not printed: what it would say does not agree.";
    case "failed":
      return "It could not be printed. Ask again.";
    case "stopped":
      return why ?? "Stopped.";
  }
}
