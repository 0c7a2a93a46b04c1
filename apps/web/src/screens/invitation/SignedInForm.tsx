import { Command } from "../../controls/Command.tsx";
import { Refused } from "../../controls/Refused.tsx";
import type { InvitationLink, LinkFormProps } from "./form-contract.ts";

/** Whoever is signed in under the address takes the part with one press. */
export const SignedInForm = ({ link, send, error, sending }: LinkFormProps & { link: InvitationLink }) => (
  <section className="link-form">
    <p>You are signed in as {link.email}.</p>
    <Refused error={error} />
    <Command next onPress={() => send({ as: "signed in" })}>
      {sending ? "Coming in" : `Come into ${link.projectName} as ${link.role}`}
    </Command>
  </section>
);
