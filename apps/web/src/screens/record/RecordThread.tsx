import type { Project, RecordEntry } from "@cornerway/schema";
import type { ReactNode } from "react";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { useUnits } from "../../units/use-units.ts";
import { digestGroups } from "../../wording/digest-groups.ts";
import { entrySentence, undosIn } from "../../wording/entry-sentence.ts";
import type { NameOf } from "../../wording/name-of.ts";
import { EntrySign } from "./EntrySign.tsx";

/** The record as a thread: each entry a stitch tied to the one before, down to the head of the whole. */
export function RecordThread({
  project,
  entries,
  whole,
  nameOf,
  filters,
  pages,
}: {
  project: Project;
  /** What is shown of it. */
  entries: readonly RecordEntry[];
  whole: readonly RecordEntry[];
  nameOf: NameOf;
  filters: ReactNode;
  pages: ReactNode;
}) {
  const units = useUnits();
  const last = whole.at(-1);
  const undos = undosIn(whole.map(({ payload }) => payload));
  return (
    <section className="record" tabIndex={0} aria-label="The record">
      <header>
        <h2>The record</h2>
        <p className="lettered">
          {project.name} · {whole.length === 0 ? "no entries" : `entries ${whole[0]?.number} to ${last?.number}`} ·
          times are local
        </p>
      </header>
      {filters}
      {whole.length === 0 ? (
        <p className="record-none">Nothing has happened here yet. Every act from now on leaves a stitch.</p>
      ) : null}
      {whole.length > 0 && entries.length === 0 ? <p className="record-none">No entry is like that.</p> : null}
      {pages}
      <table>
        <thead>
          <tr className="caption">
            <th scope="col">
              <span className="unseen">Stitch</span>
            </th>
            <th scope="col">Entry</th>
            <th scope="col">When</th>
            <th scope="col">Who</th>
            <th scope="col">What</th>
            <th scope="col">Leaf</th>
            <th scope="col">Tree head</th>
          </tr>
        </thead>
        <tbody>
          {entries.map((entry) => (
            <Stitch key={entry.number} entry={entry} told={entrySentence(entry.payload, nameOf, undos, units)} />
          ))}
        </tbody>
      </table>
      {last === undefined ? null : (
        <div className="record-head">
          <p className="caption">Last line · tree head over entries 1 to {last.number}</p>
          <p className="digest">{digestGroups(last.head, 16)}</p>
        </div>
      )}
    </section>
  );
}

function Stitch({ entry, told }: { entry: RecordEntry; told: string }) {
  const { number, at, actor, payload, leaf, head } = entry;
  return (
    <tr data-entry={number}>
      <td className="record-stitch" aria-hidden="true">
        <svg width="20" height="100%" viewBox="0 0 20 40" preserveAspectRatio="none">
          <path
            d="M10 0C5 7 15 12 10 20C5 28 15 33 10 40"
            fill="none"
            stroke="var(--ink)"
            strokeWidth="1"
            vectorEffect="non-scaling-stroke"
          />
        </svg>
        <i />
      </td>
      <th scope="row">{number}</th>
      <td>{dayAndTimeOf(at)}</td>
      <td className={actor.role === "service" ? undefined : `hand-${actor.role}`}>
        {actor.name}
        {actor.token === undefined ? null : <small className="record-token">by token {actor.token}</small>}
      </td>
      <td className="record-what">
        <EntrySign payload={payload} /> {told}
      </td>
      <td className="digest" title={leaf}>
        {digestGroups(leaf)}
      </td>
      <td className="digest" title={head}>
        {digestGroups(head)}
      </td>
    </tr>
  );
}
