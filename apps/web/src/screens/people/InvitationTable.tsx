import type { Invitation } from "@cornerway/schema";
import { dateOf } from "../../controls/calendar.ts";
import { Command } from "../../controls/Command.tsx";

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
        <table>
          <thead>
            <tr className="caption">
              <th scope="col">Address</th>
              <th scope="col">Part</th>
              <th scope="col">Good until</th>
              <th scope="col">
                <span className="unseen">Withdraw</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {invitations.map(({ id, email, role, expiresAt, invitedBy }) => (
              <tr key={id}>
                <th scope="row">
                  {email}
                  <small>by {invitedBy}</small>
                </th>
                <td className={`hand-${role}`}>{role}</td>
                <td>{dateOf(expiresAt)}</td>
                <td>
                  <Command quiet onPress={() => onWithdraw(id)}>
                    Withdraw
                    <span className="unseen"> the invitation of {email}</span>
                  </Command>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
