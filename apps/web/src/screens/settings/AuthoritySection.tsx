import type { ProjectAuthority } from "@cornerway/schema";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useAuthority } from "../../data/authority.ts";
import { useRoom } from "../../room/room-context.ts";
import { AuthorityForm } from "./AuthorityForm.tsx";

/** How the authority that checks the plans wants a set that comes again marked, and its comments answered. */
export function AuthoritySection() {
  const { project } = useRoom();
  const authority = useAuthority(project.id);
  return (
    <section aria-labelledby="settings-authority">
      <h2 className="caption" id="settings-authority">
        What the authority asks
      </h2>
      {authority.isPending ? (
        <Ruled label="Fetching what the authority asks" />
      ) : authority.data === undefined ? (
        <Trouble error={authority.error} again={() => void authority.refetch()} />
      ) : (
        <>
          <p>{setWords(authority.data)}</p>
          <AuthorityForm key={authority.data.set?.at ?? "usual"} profile={authority.data.profile} />
        </>
      )}
    </section>
  );
}

const setWords = ({ set }: ProjectAuthority): string =>
  set === null
    ? "As is usual: nobody has laid down what this authority asks. Its own checklist says."
    : `Laid down by ${set.by}, ${dayAndTimeOf(set.at)}. The next set is marked so.`;
