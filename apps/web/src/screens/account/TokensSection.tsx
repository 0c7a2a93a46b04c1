import { dateOf, dayAndTimeOf } from "../../controls/calendar.ts";
import { Command } from "../../controls/Command.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { Ruled } from "../../controls/Ruled.tsx";
import { useTokens, useWithdrawToken } from "../../data/token.ts";
import { NewTokenForm } from "./NewTokenForm.tsx";
import { PageScroll } from "../../sheet/PageScroll.tsx";

/** Access tokens for scripts that act as this person: those that are good, and a new one. */
export function TokensSection() {
  const tokens = useTokens();
  const withdraw = useWithdrawToken();
  if (tokens.isPending) return <Ruled label="Looking for your access tokens" lines={3} />;
  return (
    <section aria-labelledby="account-tokens">
      <h2 className="caption" id="account-tokens">
        Access tokens
      </h2>
      <p>
        A script sends one in place of a password. It acts as you, never does more than you may, and the record says
        that it was a token. Your account, people and stamps are not for scripts.
      </p>
      <Refused error={tokens.error ?? withdraw.error} />
      {tokens.data !== undefined && tokens.data.length > 0 && (
        <PageScroll label="Table of tokens">
          <table className="account-places">
            <thead>
              <tr className="caption">
                <th scope="col">For</th>
                <th scope="col">Begins with</th>
                <th scope="col">May</th>
                <th scope="col">Last used</th>
                <th scope="col">Ends</th>
                <th scope="col">
                  <span className="unseen">Withdraw it</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {tokens.data.map(({ id, name, prefix, scopes, lastUsedAt, expiresAt }) => (
                <tr key={id}>
                  <th scope="row">{name}</th>
                  <td className="digest">{prefix}</td>
                  <td>{scopes.join(", ")}</td>
                  <td>{lastUsedAt === null ? "never" : dayAndTimeOf(lastUsedAt)}</td>
                  <td>{dateOf(expiresAt)}</td>
                  <td>
                    <Command quiet onPress={() => withdraw.mutate(id)}>
                      Withdraw
                    </Command>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </PageScroll>
      )}
      <NewTokenForm />
    </section>
  );
}
