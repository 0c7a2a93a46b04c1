import type { OpenedLink, UseLink } from "@cornerway/schema";

export type InvitationLink = Extract<OpenedLink, { kind: "invitation" }>;

export type ReaderLinkOpened = Extract<OpenedLink, { kind: "reader-link" }>;

/** What every form of a link is given: how to use it, what the service said last, and whether it is under way. */
export interface LinkFormProps {
  send: (words: UseLink) => void;
  error: unknown;
  sending: boolean;
}
