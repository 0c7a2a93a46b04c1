import type { Invitation, SignedHead } from "@cornerway/schema";
import type { Letter } from "./mailer.ts";

const foot = "\n-- \nCornerway. Whoever holds this letter holds the link: pass it to nobody.\n";

const article = (role: string): string => (/^[aeiou]/.test(role) ? "an" : "a");

export const invitationLetter = (
  { email, role, invitedBy }: Invitation,
  projectName: string,
  address: string,
  head: SignedHead | null,
): Letter => ({
  to: email,
  subject: `${invitedBy} asks you into ${projectName}`,
  text: `${invitedBy} asks you into the project ${projectName} as ${article(role)} ${role}.

${address}

The link works once, within seven days. Without it nothing happens.
${head === null ? "" : headLines(head)}${foot}`,
});

/** A head in a letter lies outside the service: against it one sees later whether the record was altered. */
const headLines = ({ number, head, fingerprint }: SignedHead): string => `
The record of the project to entry ${number}, as this letter was written. Keep it to check the record by:
head ${number}:${head}
signed by the key ${fingerprint}
`;

export const newPasswordLetter = (person: { name: string; email: string }, address: string): Letter => ({
  to: person.email,
  subject: "Set a new password",
  text: `${person.name}, someone asked for a new password for this address.

${address}

The link works once, within an hour. If it was not you, leave it: the present password stays good.
${foot}`,
});

export const passwordChangedLetter = (person: { name: string; email: string }): Letter => ({
  to: person.email,
  subject: "Your password was changed",
  text: `${person.name}, the password of this address was changed just now, and its other sign-ins have ended.

If it was not you, ask for a new password on the sign-in page at once, and tell whoever runs the service.
`,
});
