import type { Act, Project, Session } from "@cornerway/schema";
import { beforeConfirmation, may } from "@cornerway/schema";
import { createContext, useContext } from "react";
import type { DraftStore } from "../data/draft/draft-store.ts";
import type { Presence } from "@cornerway/schema";
import type { HereBoard } from "./here-board.ts";

/** What every sheet of a project shares. */
export interface Room {
  project: Project;
  me: Session["person"];
  /** Null for those who may not read the draft. */
  draft: DraftStore | null;
  /** When the live line dropped, or null while it holds. */
  lineDownSince: number | null;
  /** The others who have this project open. */
  here: HereBoard;
  /** Tells the others what this page shows and holds. */
  tell: (presence: Presence) => void;
  /** Says one sentence in the live region. */
  say: (sentence: string) => void;
}

export const RoomContext = createContext<Room | null>(null);

export function useRoom(): Room {
  const room = useContext(RoomContext);
  if (room === null) throw new Error("useRoom is called outside a project");
  return room;
}

/** Undefined when this person may do the act here; otherwise the sentence that says who may. */
export function whyNot(
  { roles, awaitsConfirmation }: Pick<Project, "roles" | "awaitsConfirmation">,
  act: Act,
): string | undefined {
  if (!may(roles, act)) return notYours[act];
  const waits = awaitsConfirmation && !beforeConfirmation.includes(act);
  const otherwise = roles.filter((role) => role !== "engineer");
  return waits && !may(otherwise, act) ? "The owner has not confirmed you as the engineer yet." : undefined;
}

const notYours: Record<Act, string> = {
  draw: "Only the architect draws.",
  "send-revision": "Only the architect sends a revision.",
  "run-assessment": "Only architect and engineer have a revision checked again.",
  "write-note": "A reader writes no notes.",
  "settle-note": "A reader settles no notes.",
  "make-request": "Only the engineer asks for a change.",
  "answer-request": "Only the architect answers a change request.",
  "press-stamp": "Only the engineer presses the stamp.",
  "ask-question": "Architect, checker and owner ask the engineer.",
  "answer-question": "Only the engineer answers.",
  "meet-condition": "Architect, engineer and owner say how a condition is met.",
  "judge-condition": "Engineer and checker close their conditions.",
  "check-revision": "Only a checker, a second engineer, checks.",
  "dispose-mark": "Only the engineer puts a disposition on a mark.",
  "confirm-value": "Only the engineer confirms values.",
  "issue-for-seal": "Only the engineer issues for seal.",
  "keep-file": "Architect, engineer and owner lay files and photos here.",
  "survey-container": "Architect, engineer and owner survey containers.",
  "judge-container": "Only the engineer judges a container.",
  "assign-container": "Only the architect assigns a container to its place.",
  "close-site-item": "Architect, engineer and owner say what stands on site.",
  "judge-site-item": "Only the engineer judges what stands otherwise.",
  "read-prices": "A reader sees no prices.",
  "keep-cost-book": "Only engineer and owner change the cost book.",
  decide: "Only the owner agrees to a price or declines it.",
  "keep-options": "Only the architect keeps alternatives.",
  "pick-option": "Architect and owner pick an alternative.",
  "print-set": "A reader takes the sets that were printed.",
  "keep-comments": "Architect, engineer and owner bring in comments of the authority.",
  "answer-comment": "Architect and engineer answer the authority.",
  "close-comment": "Comments are not yours to close.",
  "read-draft": "The draft is seen by architect, engineer and checker. Revisions are seen here once they are sent.",
  "read-revisions": "Revisions are not yours to see.",
  "read-record": "The record is not yours to see.",
  "read-people": "Who has a part here is not yours to see.",
  "leave-project": "You have no part here to lay down.",
  invite: "Only architect and owner ask people in.",
  "confirm-engineer": "Only the owner confirms the engineer.",
  "remove-person": "Only the owner ends someone's part.",
  "set-expiry": "Only architect and owner set when a part ends.",
  "take-archive": "Only the architect, who sees all of it, takes the whole project.",
  "keep-webhooks": "Only architect and owner have others told.",
};
