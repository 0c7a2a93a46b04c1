import type { ChangeRequest, Note, QuestionView, Revision } from "@cornerway/schema";
import { useNavigate } from "@tanstack/react-router";
import { lazy, Suspense } from "react";
import { Command } from "../../controls/Command.tsx";
import { elementPlace } from "../../notes/element-place.ts";
import type { UnplacedNote } from "../../notes/placed-note.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { Slip } from "../../sheet/Slip.tsx";
import { ConditionList } from "./conditions/ConditionList.tsx";
import { AskForm } from "./questions/AskForm.tsx";
import { QuestionList } from "./questions/QuestionList.tsx";
import { AnsweredRequest } from "./AnsweredRequest.tsx";
import { NoteSlip } from "./NoteSlip.tsx";
import { RequestSlip } from "./RequestSlip.tsx";
import { namesIn } from "../../wording/name-of.ts";
import { StampLines } from "./stamps/StampLines.tsx";
import type { RequestDraft } from "./use-request-draft.ts";

/** Fetched when a request is begun. */
const RequestDraftSlip = lazy(async () => ({ default: (await import("./RequestDraftSlip.tsx")).RequestDraftSlip }));

export interface ReviewSlipsProps {
  revision: Revision;
  requests: readonly ChangeRequest[];
  notes: readonly Note[];
  current: boolean;
  chosenId: string | null;
  /** The view one looks at, in which a question is put. */
  view: QuestionView;
  chosenNote: UnplacedNote | null;
  request: RequestDraft;
  cannot: string | null;
  onAway: () => void;
}

/**
 * What is laid first in the margin of a review: requests that ask for an answer, then the hand that writes, on what the
 * revision holds; what a request only proposes is answered with the request.
 */
export function ReviewSlips(props: ReviewSlipsProps) {
  const { revision, requests, current, chosenId, chosenNote, request, cannot, onAway } = props;
  const { project } = useRoom();
  const navigate = useNavigate();
  const whyNoRequest = whyNot(project, "make-request") ?? (current ? undefined : "There is a newer revision.");
  return (
    <>
      {cannot === null ? null : (
        <Slip label="Not drawn">
          <p>{cannot}</p>
          <Command quiet onPress={onAway}>
            Take the slip away
          </Command>
        </Slip>
      )}
      <StampLines letter={revision.letter} nameOf={namesIn(revision.scheme)} />
      {requests.map((each) =>
        each.state === "open" ? (
          <RequestSlip key={each.id} request={each} revision={revision} />
        ) : (
          <AnsweredRequest key={each.id} request={each} />
        ),
      )}
      {request.open ? (
        <Suspense fallback={null}>
          <RequestDraftSlip revision={revision} request={request} />
        </Suspense>
      ) : (
        <>
          {chosenId === null || elementPlace(revision.scheme, chosenId) === null ? null : (
            <>
              <NoteSlip
                key={`${chosenId} ${chosenNote?.id ?? ""}`}
                revision={revision}
                elementId={chosenId}
                chosenNote={chosenNote}
                notes={props.notes}
              />
              <AskForm key={chosenId} revision={revision} elementId={chosenId} view={props.view} />
            </>
          )}
          <QuestionList revision={revision} current={current} chosenId={chosenId} />
          <ConditionList />
          <p className="review-ask">
            <Command onPress={request.begin} asleepBecause={whyNoRequest}>
              Ask for a change
            </Command>
            <Command
              quiet
              onPress={() => void navigate({ to: "/projects/$projectId/seal", params: { projectId: project.id } })}
            >
              Check and seal
            </Command>
          </p>
        </>
      )}
    </>
  );
}
