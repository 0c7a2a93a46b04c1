import type { InvitationLink, LinkFormProps } from "./form-contract.ts";
import { PersonForm } from "./PersonForm.tsx";

/** Someone new says what they are called and chooses a password; their address is that of the invitation. */
export const NewPersonForm = ({ link, send, error, sending }: LinkFormProps & { link: InvitationLink }) => (
  <PersonForm
    knownEmail={link.email}
    command={sending ? "Coming in" : `Come into ${link.projectName}`}
    error={error}
    onWords={({ name, password }) => send({ as: "new person", name, password })}
  />
);
