import type { Act, HeldPart, ProjectMember } from "@cornerway/schema";
import { useState } from "react";
import { dateOf } from "../../controls/calendar.ts";
import { Command } from "../../controls/Command.tsx";
import type { PeopleAct } from "../../data/people.ts";
import { ExpiryForm } from "./ExpiryForm.tsx";
import { PageScroll } from "../../sheet/PageScroll.tsx";

interface Doing {
  acts: readonly Act[];
  meId: string;
  onAct: (what: PeopleAct) => void;
}

/** Everyone with a part, a row for each part they hold. */
export function MemberTable({ members, ...doing }: Doing & { members: readonly ProjectMember[] }) {
  const rows = members.flatMap((member) => member.parts.map((part) => ({ member, part })));
  if (rows.length === 0)
    return (
      <section aria-labelledby="people-members">
        <h2 className="caption" id="people-members">
          People
        </h2>
        <p>Nobody has a part yet. Whoever is asked in stands here once they have come.</p>
      </section>
    );
  return (
    <section aria-labelledby="people-members">
      <h2 className="caption" id="people-members">
        People
      </h2>
      <PageScroll label="Table of people">
        <table className="people-members">
          <thead>
            <tr className="caption">
              <th scope="col">Name</th>
              <th scope="col">Part</th>
              <th scope="col">Since</th>
              <th scope="col">Stands</th>
              <th scope="col">
                <span className="unseen">What can be done</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ member, part }) => (
              <MemberRow key={`${member.id} ${part.role}`} member={member} part={part} {...doing} />
            ))}
          </tbody>
        </table>
      </PageScroll>
    </section>
  );
}

function MemberRow({ member, part, acts, meId, onAct }: Doing & { member: ProjectMember; part: HeldPart }) {
  const { id: personId, name, email, licence } = member;
  const { role, since, confirmedAt } = part;
  const confirmable = role === "engineer" && confirmedAt === null && acts.includes("confirm-engineer");
  return (
    <tr>
      <th scope="row">
        {name}
        {personId === meId ? " (you)" : ""}
        {email === null ? null : <small>{email}</small>}
      </th>
      <td className={`hand-${role}`}>{role}</td>
      <td>{dateOf(since)}</td>
      <td>
        <Standing part={part} />
        {role === "engineer" && (
          <small>
            {licence === null
              ? "No licence stated."
              : `Licence ${licence.number}, ${licence.jurisdiction}, as stated by ${name}. Not verified here.`}
          </small>
        )}
      </td>
      <td>
        <div className="people-acts">
          {confirmable && (
            <Command
              asleepBecause={personId === meId ? "Another owner confirms you." : undefined}
              onPress={() => onAct({ act: "confirm", personId })}
            >
              {`${name} is the engineer`}
            </Command>
          )}
          {role === "reader" && acts.includes("set-expiry") && (
            <ExpiryForm
              name={name}
              endsAt={part.expiresAt}
              onEnd={(expiresAt) => onAct({ act: "end", personId, expiresAt })}
            />
          )}
          {personId !== meId && acts.includes("remove-person") && (
            <Removal
              ask="Take away"
              what={`${name} as ${role}`}
              onRemove={() => onAct({ act: "remove", personId, role })}
            />
          )}
          {personId === meId && acts.includes("leave-project") && (
            <Removal ask="Leave" what={`as ${role}`} onRemove={() => onAct({ act: "leave", role })} />
          )}
        </div>
      </td>
    </tr>
  );
}

function Standing({ part: { role, confirmedAt, expiresAt } }: { part: HeldPart }) {
  if (role === "engineer")
    return confirmedAt === null ? (
      <b className="people-waits">Waits for the owner's word; reads, and does nothing else</b>
    ) : (
      `Confirmed on ${dateOf(confirmedAt)}`
    );
  return expiresAt === null ? "Open-ended" : `Until ${dateOf(expiresAt)}`;
}

/** Asks once more before a part is taken away or laid down: it cannot be taken back by a key. */
function Removal({ ask, what, onRemove }: { ask: "Take away" | "Leave"; what: string; onRemove: () => void }) {
  const [asked, setAsked] = useState(false);
  if (!asked)
    return (
      <Command quiet onPress={() => setAsked(true)}>
        {ask}
        <span className="unseen"> {what}</span>
      </Command>
    );
  return (
    <>
      <Command onPress={onRemove}>{`${ask} ${what}`}</Command>
      <Command quiet onPress={() => setAsked(false)}>
        {ask === "Leave" ? "Stay" : "Leave it"}
      </Command>
    </>
  );
}
