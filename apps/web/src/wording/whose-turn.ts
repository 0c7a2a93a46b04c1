import type { ProjectSummary, Role } from "@cornerway/schema";

type Turn = Pick<ProjectSummary, "waitsFor" | "roles" | "awaitsConfirmation">;

/** True where the next step is this person's and they may take it; an engineer first waits for the owner's word. */
export const waitsForMe = ({ waitsFor, roles, awaitsConfirmation }: Turn): boolean =>
  waitsFor !== null && roles.includes(waitsFor) && !(waitsFor === "engineer" && awaitsConfirmation);

/** "with you", "with the engineer" … for a project's line on the desk. */
export function whoseTurn(turn: Turn): string {
  if (turn.waitsFor === null) return "waits for nobody";
  if (waitsForMe(turn)) return "with you";
  if (turn.roles.includes(turn.waitsFor)) return "with the owner, to confirm you as the engineer";
  return `with the ${turn.waitsFor}`;
}

/** What the one who is waited for does next, as the desk says it. */
export const nextStep: Record<Role, { heading: string; sentence: string; command: string }> = {
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
    sentence: "Something in this project waits for the owner.",
    command: "Open the status",
  },
  reader: {
    heading: "Read the record",
    sentence: "The record of this project is open to you.",
    command: "Open the record",
  },
};
