import type { OpenedLink } from "@cornerway/schema";
import { useQueryClient } from "@tanstack/react-query";
import { Link, useNavigate } from "@tanstack/react-router";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { changePerson } from "../../data/change-person.ts";
import { isProblem } from "../../data/http.ts";
import { useLinkUse, useOpenedLink } from "../../data/link.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import type { LinkFormProps } from "./form-contract.ts";
import { FirstForm } from "./FirstForm.tsx";
import { InvitationForm } from "./InvitationForm.tsx";
import { NewPasswordForm } from "./NewPasswordForm.tsx";
import { ReaderForm } from "./ReaderForm.tsx";
import "./link-page.css";

/** Where a link leads: an invitation, a project to read, the first administrator, or a new password. */
export function LinkPage() {
  const link = useOpenedLink();
  if (link.isPending) return <Ruled label="Opening the link" />;
  if (link.isError && isProblem(link.error, "link-gone")) return <LinkGone />;
  if (link.isError) return <Trouble error={link.error} again={() => void link.refetch()} />;
  return <Opened link={link.data} />;
}

function Opened({ link }: { link: OpenedLink }) {
  const client = useQueryClient();
  const navigate = useNavigate();
  const use = useLinkUse();
  const send: LinkFormProps["send"] = (words) =>
    use.mutate(words, {
      onSuccess: ({ session, projectId }) => {
        changePerson(client, session);
        if (projectId === null) void navigate({ to: "/" });
        else void navigate({ to: "/projects/$projectId", params: { projectId } });
      },
    });
  if (isProblem(use.error, "link-gone")) return <LinkGone />;
  const rest = { send, error: use.error, sending: use.isPending };
  switch (link.kind) {
    case "invitation":
      return <InvitationForm link={link} {...rest} />;
    case "reader-link":
      return <ReaderForm link={link} {...rest} />;
    case "first-administrator":
      return <FirstForm {...rest} />;
    case "new-password":
      return <NewPasswordForm link={link} {...rest} />;
  }
}

const LinkGone = () => (
  <PageSheet
    title="Link"
    heading="This link opens nothing any more"
    way={
      <Link className="command" to="/">
        To the desk
      </Link>
    }
  >
    <section className="link-words">
      <p>It was used, withdrawn, or its time is over. A link works once; one to read works until it ends.</p>
      <p>Whoever gave it to you can make a new one. For a new password, have another letter sent to your address.</p>
      <Link className="command" to="/forgotten">
        Have a letter sent
      </Link>
    </section>
  </PageSheet>
);
