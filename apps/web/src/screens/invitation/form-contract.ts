import type { UseLink } from "@cornerway/schema";

/** What every form of a link is given: how to use it, what the service said last, and whether it is under way. */
export interface LinkFormProps {
  send: (words: UseLink) => void;
  error: unknown;
  sending: boolean;
}
