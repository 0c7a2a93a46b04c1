import type { ProjectSummary, Role } from "@cornerway/schema";

type Turn = Pick<ProjectSummary, "waitsFor" | "roles" | "awaitsConfirmation" | "engineerToConfirm">;

/** What waits for a person: the next step of a role they hold, or their word as the owner on who the engineer is. */
export type Step = Role | "confirm the engineer";

/** What waits for this person in a project and they may do; an engineer first waits for the owner's word. */
export function stepForMe(turn: Turn): Step | null {
  const { waitsFor, roles, awaitsConfirmation, engineerToConfirm } = turn;
  if (engineerToConfirm && roles.includes("owner") && !awaitsConfirmation) return "confirm the engineer";
  if (waitsFor === null || !roles.includes(waitsFor)) return null;
  return awaitsConfirmation && waitsFor !== "architect" ? null : waitsFor;
}

/** "with you", "with the engineer" … for a project's line on the desk. */
export function whoseTurn(turn: Turn): string {
  const { waitsFor, engineerToConfirm, awaitsConfirmation } = turn;
  if (waitsFor === null) return "waits for nobody";
  const step = stepForMe(turn);
  if (step === waitsFor) return "with you";
  if (waitsFor !== "owner" || !engineerToConfirm) return `with the ${waitsFor}`;
  if (step === "confirm the engineer") return "with you, to confirm the engineer";
  return `with the owner, to confirm ${awaitsConfirmation ? "you as the" : "the"} engineer`;
}

/** What the one who is waited for does next, as the desk says it. */
export const nextStep: Record<Step, { heading: string; sentence: string; command: string }> = {
  architect: {
    heading: "Draw on",
    sentence: "The sheet is with the architect: to draw, to answer what was asked, and to send the next revision.",
    command: "Open the scheme",
  },
  engineer: {
    heading: "Review and stamp",
    sentence: "A revision is here. Its marks are on the drawing and wait for an answer.",
    command: "Open the review",
  },
  checker: {
    heading: "Check the review",
    sentence: "The engineer's answers wait for a second pair of eyes.",
    command: "Open the review",
  },
  owner: {
    heading: "Say yes or no",
    sentence: "A price in this project waits for the owner: to agree to it, or to decline it.",
    command: "Open the status",
  },
  "confirm the engineer": {
    heading: "Say who the engineer is",
    sentence: "Someone comes as the engineer, and waits for your word: until then they read, and do nothing else.",
    command: "See who it is",
  },
  reader: {
    heading: "Read the record",
    sentence: "The record of this project is open to you.",
    command: "Open the record",
  },
};
