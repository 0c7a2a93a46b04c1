import type { Invitation } from "@cornerway/schema";
import { WithdrawTable } from "./WithdrawTable.tsx";

/** Who is asked in and has not come yet. */
export function InvitationTable({
  invitations,
  onWithdraw,
}: {
  invitations: readonly Invitation[];
  onWithdraw: (id: string) => void;
}) {
  return (
    <section aria-labelledby="people-invitations">
      <h2 className="caption" id="people-invitations">
        Asked in, not come yet
      </h2>
      {invitations.length === 0 ? (
        <p>Nobody is waited for.</p>
      ) : (
        <WithdrawTable
          heads={["Address", "Part"]}
          rows={invitations.map(({ id, email, role, expiresAt, invitedBy }) => ({
            ...{ id, for: email, by: `by ${invitedBy}`, expiresAt },
            about: <span className={`hand-${role}`}>{role}</span>,
            what: `the invitation of ${email}`,
          }))}
          onWithdraw={onWithdraw}
        />
      )}
    </section>
  );
}
