import type { Premium } from "@cornerway/schema";
import { newUuid } from "../../tools/new-uuid.ts";
import { digestGroups } from "../../wording/digest-groups.ts";
import type { DraftSnapshot } from "../../data/draft/draft-store.ts";
import { unsentIn } from "../../data/draft/kept.ts";
import { useRevisions, useSendRevision } from "../../data/revision.ts";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { MarginFoot } from "../../room/MarginFoot.tsx";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { PremiumLine } from "../../prices/PremiumLine.tsx";
import { nextLetter } from "../../wording/next-letter.ts";
import { useState } from "react";
import { BringIn, type BringInProps } from "./BringIn.tsx";
import { SaveFile } from "./SaveFile.tsx";
import "./draft-footer.css";

/** The key, and the next step: sending what is drawn to the engineer. */
export function DraftFooter({
  draft,
  premium,
  undoes,
  pxPerM,
  onKeys,
  onDraw,
}: {
  draft: DraftSnapshot;
  /** Of what is drawn; null where it is not counted. */
  premium: Premium | null;
  /** What the edit under way would undo, in one line. */
  undoes: string | null;
  pxPerM: number;
  onKeys: () => void;
  onDraw: BringInProps["onDraw"];
}) {
  const { project } = useRoom();
  const revisions = useRevisions(project.id);
  const send = useSendRevision(project.id);
  const [remark, setRemark] = useState("");
  const last = revisions.data?.toSorted((a, b) => (a.sentAt < b.sentAt ? 1 : -1))[0];
  const letter = nextLetter(last?.letter ?? null);
  const why = whyNot(project, "send-revision") ?? whyNotYet(draft, last?.contentDigest);
  const dispatch = () =>
    send.mutate(
      {
        id: newUuid(),
        draftNumber: draft.number,
        contentDigest: draft.contentDigest,
        remark: remark.trim() === "" ? null : remark.trim(),
      },
      { onSuccess: () => setRemark("") },
    );
  return (
    <div className="draft-footer">
      <div className="draft-next">
        {undoes === null ? null : <p className="draft-undoes">{undoes}</p>}
        {premium === null ? null : <PremiumLine projectId={project.id} premium={premium} />}
        <Waiting draft={draft} />
        {why === undefined ? (
          <PersonField label={`What is new in revision ${letter}`}>
            {(bound) => (
              <input {...bound} value={remark} maxLength={2000} onChange={(event) => setRemark(event.target.value)} />
            )}
          </PersonField>
        ) : null}
        <div className="draft-send">
          <Command next onPress={dispatch} asleepBecause={send.isPending ? "It is on its way." : why}>
            {`Send revision ${letter} to the engineer`}
          </Command>
          {why === undefined ? (
            <span className="digest" title={draft.contentDigest}>
              {digestGroups(draft.contentDigest)}
            </span>
          ) : (
            <span className="draft-why">{why}</span>
          )}
        </div>
        {send.isError ? (
          <p className="field-fault" role="alert">
            {send.error.message}
          </p>
        ) : null}
      </div>
      {draft.scheme.containers.length === 0 ? null : (
        <div className="scheme-file">
          {draft.pending.length > 0 ? (
            <Command quiet onPress={() => undefined} asleepBecause="The last moves are still on their way.">
              Take it as a file
            </Command>
          ) : (
            <SaveFile projectId={project.id} letter={null} />
          )}
          <BringIn scheme={draft.scheme} onDraw={onDraw} asleepBecause={whyNot(project, "draw")} />
        </div>
      )}
      <MarginFoot pxPerM={pxPerM} onKeys={onKeys} />
    </div>
  );
}

/** The moves that are here and not yet with the service; nothing while a move is only on its way. */
function Waiting({ draft }: { draft: DraftSnapshot }) {
  const { lineDownSince } = useRoom();
  const count = unsentIn(draft);
  if (count === 0 || (draft.cutOffSince === null && lineDownSince === null && draft.conflicts.length === 0))
    return null;
  return (
    <p className="draft-waiting" role="status">
      {count === 1 ? "1 move waits for the line." : `${count} moves wait for the line.`}
    </p>
  );
}

function whyNotYet(draft: DraftSnapshot, lastDigest: string | undefined): string | undefined {
  if (draft.scheme.containers.length === 0) return "The sheet is empty. Set a container first.";
  if (draft.conflicts.length > 0) return "Settle first what two hands drew.";
  if (draft.pending.length > 0) return "The last moves are still on their way.";
  if (draft.contentDigest === lastDigest) return "Nothing has changed since the last revision.";
  return undefined;
}
