import type { ReactNode } from "react";
import { dateOf } from "../../controls/calendar.ts";
import { ColumnHeads } from "../../controls/ColumnHeads.tsx";
import { Command } from "../../controls/Command.tsx";

/** Something given to someone that is good until a day. */
export interface Withdrawable {
  id: string;
  for: string;
  /** Who gave it. */
  by: string;
  about: ReactNode;
  expiresAt: string;
  /** What the command withdraws, told to whoever does not see the row. */
  what: string;
}

/** What is good now, each with the command that withdraws it. */
export function WithdrawTable({
  heads: [whom, about],
  rows,
  onWithdraw,
}: {
  heads: readonly [string, string];
  rows: readonly Withdrawable[];
  onWithdraw: (id: string) => void;
}) {
  return (
    <table>
      <ColumnHeads heads={[whom, about, "Good until", { unseen: "Withdraw" }]} />
      <tbody>
        {rows.map((row) => (
          <tr key={row.id}>
            <th scope="row">
              {row.for}
              <small>{row.by}</small>
            </th>
            <td>{row.about}</td>
            <td>{dateOf(row.expiresAt)}</td>
            <td>
              <Command quiet onPress={() => onWithdraw(row.id)}>
                Withdraw
                <span className="unseen"> {row.what}</span>
              </Command>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
