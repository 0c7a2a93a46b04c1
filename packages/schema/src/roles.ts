import { z } from "zod";

export const roles = ["architect", "engineer", "checker", "owner", "reader"] as const;
export const Role = z.enum(roles).meta({ id: "Role" });
export type Role = z.infer<typeof Role>;

/** Every act a person can do in a project. */
export const acts = [
  "draw",
  "send-revision",
  "run-assessment",
  "write-note",
  "settle-note",
  "make-request",
  "answer-request",
  "press-stamp",
  "read-prices",
  "keep-cost-book",
  "decide",
  "keep-options",
  "pick-option",
  "ask-question",
  "answer-question",
  "meet-condition",
  "judge-condition",
  "check-revision",
  "dispose-mark",
  "confirm-value",
  "issue-for-seal",
  "keep-file",
  "survey-container",
  "judge-container",
  "assign-container",
  "close-site-item",
  "judge-site-item",
  "print-set",
  "keep-comments",
  "answer-comment",
  "close-comment",
  "read-draft",
  "read-revisions",
  "read-record",
  "read-people",
  "leave-project",
  "invite",
  "confirm-engineer",
  "remove-person",
  "set-expiry",
  "keep-webhooks",
  "take-archive",
] as const;
export type Act = (typeof acts)[number];

/** Who may do what. The API enforces it, the client shows it; nobody writes a second copy. */
export const mayDo: Record<Act, readonly Role[]> = {
  draw: ["architect"],
  "send-revision": ["architect"],
  "run-assessment": ["architect", "engineer"],
  "write-note": ["architect", "engineer", "checker", "owner"],
  "settle-note": ["architect", "engineer", "checker", "owner"],
  "make-request": ["engineer"],
  "answer-request": ["architect"],
  "press-stamp": ["engineer"],
  "read-prices": ["architect", "engineer", "checker", "owner"],
  "keep-cost-book": ["engineer", "owner"],
  decide: ["owner"],
  /** Opens a set of alternatives, and keeps the draft as one of them. */
  "keep-options": ["architect"],
  /** Of price, scope and risk: whoever pays, or the architect on their word. */
  "pick-option": ["architect", "owner"],
  /** With all that the side that asked does later: inform, close, open again. */
  "ask-question": ["architect", "checker", "owner"],
  "answer-question": ["engineer"],
  "meet-condition": ["architect", "engineer", "owner"],
  "judge-condition": ["engineer", "checker"],
  "check-revision": ["checker"],
  "dispose-mark": ["engineer"],
  "confirm-value": ["engineer"],
  /** With the sealed copy that comes back. */
  "issue-for-seal": ["engineer"],
  "keep-file": ["architect", "engineer", "owner"],
  /** Offers a container for the building, and inspects it. */
  "survey-container": ["architect", "engineer", "owner"],
  /** Accepts, asks for repair or rejects; sets the limits it is held against. */
  "judge-container": ["engineer"],
  /** Draws what was found of it on the unit it is assigned to. */
  "assign-container": ["architect"],
  /** Says what stands on site: as drawn, otherwise, or not at all. */
  "close-site-item": ["architect", "engineer", "owner"],
  "judge-site-item": ["engineer"],
  "print-set": ["architect", "engineer", "checker", "owner"],
  /** Brings in what the authority asks, and says who sees to it. */
  "keep-comments": ["architect", "engineer", "owner"],
  "answer-comment": ["architect", "engineer"],
  /** Never what one answered oneself. */
  "close-comment": roles,
  "read-draft": ["architect", "engineer", "checker"],
  "read-revisions": roles,
  "read-record": roles,
  "read-people": roles,
  /** Lays down one's own part. */
  "leave-project": roles,
  invite: ["architect", "owner"],
  "confirm-engineer": ["owner"],
  "remove-person": ["owner"],
  "set-expiry": ["architect", "owner"],
  "keep-webhooks": ["architect", "owner"],
  /** The whole project, drafts and prices with it: whoever may see every entry of its record. */
  "take-archive": ["architect"],
};

/** What an administrator of the service does in any project, with no part in it: see to its people, never to its drawing. */
export const administratorMayDo: readonly Act[] = ["read-people", "invite", "remove-person", "set-expiry"];

/** What an engineer does whom the owner has not confirmed: read, and leave. Every other act of theirs waits. */
export const beforeConfirmation: readonly Act[] = [
  "read-draft",
  "read-revisions",
  "read-record",
  "read-people",
  "read-prices",
  "leave-project",
];

/** True when someone holding any of these roles may do the act. */
export const may = (held: readonly Role[], act: Act): boolean => held.some((role) => mayDo[act].includes(role));

/** One person never judges a drawing they make: architect and engineer, or engineer and checker, exclude each other. */
export const rolesExclude: readonly (readonly [Role, Role])[] = [
  ["architect", "engineer"],
  ["architect", "checker"],
  ["engineer", "checker"],
];
