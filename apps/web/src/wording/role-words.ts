import type { Role } from "@cornerway/schema";

/** What each role is there for, in a sentence or two. */
export const roleWords: Record<Role, string> = {
  architect: "The architect draws the scheme, sends its revisions, and answers what the engineer asks for.",
  engineer:
    "The engineer reads what each move does to the load, writes on the drawing, asks for changes and presses the stamp, once the owner has confirmed them.",
  checker: "The checker is a second engineer: reads everything and writes notes, and neither draws nor stamps.",
  owner: "The owner reads where the project stands, and says who the engineer is.",
  reader: "The reader sees the revisions that were sent and the record of what was decided, until their part ends.",
};
