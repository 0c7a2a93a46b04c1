import { PageSheet } from "../../sheet/PageSheet.tsx";
import { roleWords } from "../../wording/role-words.ts";
import type { InvitationLink, LinkFormProps } from "./form-contract.ts";
import { KnownPersonForm } from "./KnownPersonForm.tsx";
import { NewPersonForm } from "./NewPersonForm.tsx";
import { SignedInForm } from "./SignedInForm.tsx";

/** Someone is asked into a project, and comes in with a new account or with the one they have. */
export function InvitationForm({ link, ...rest }: LinkFormProps & { link: InvitationLink }) {
  const { projectName, role, invitedBy, email, account } = link;
  const Form = account === "none" ? NewPersonForm : account === "known" ? KnownPersonForm : SignedInForm;
  return (
    <PageSheet title={`Into ${projectName}`} heading={`${invitedBy} asks you into ${projectName}`}>
      <div className="page-columns">
        <Form link={link} {...rest} />
        <section className="link-words">
          <h2 className="caption">What you are asked in for</h2>
          <dl>
            <dt>Project</dt>
            <dd>{projectName}</dd>
            <dt>Your part</dt>
            <dd className={`hand-${role}`}>{role}</dd>
            <dt>Address</dt>
            <dd>{email}</dd>
          </dl>
          <p>{roleWords[role]}</p>
        </section>
      </div>
    </PageSheet>
  );
}
