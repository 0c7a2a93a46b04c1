import { dayAndTimeOf } from "../../controls/calendar.ts";
import { Command } from "../../controls/Command.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { Ruled } from "../../controls/Ruled.tsx";
import { useEndSessions, useSignedInPlaces } from "../../data/account.ts";
import { PageScroll } from "../../sheet/PageScroll.tsx";

/** Where this person is signed in; each place ends by itself, or all but this one at once. */
export function SignedInPlaces() {
  const places = useSignedInPlaces();
  const end = useEndSessions();
  if (places.isPending) return <Ruled label="Looking where you are signed in" lines={3} />;
  const others = places.data?.filter(({ present }) => !present) ?? [];
  return (
    <section aria-labelledby="account-places">
      <h2 className="caption" id="account-places">
        Signed in
      </h2>
      <Refused error={places.error ?? end.error} />
      <PageScroll label="Table of sign-ins">
        <table className="account-places">
          <thead>
            <tr className="caption">
              <th scope="col">With</th>
              <th scope="col">From</th>
              <th scope="col">Since</th>
              <th scope="col">Last seen</th>
              <th scope="col">Ends by itself</th>
              <th scope="col">
                <span className="unseen">End it</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {places.data?.map(({ id, agent, network, since, seenAt, endsAt, present }) => (
              <tr key={id}>
                <th scope="row">{agent}</th>
                <td>{network}</td>
                <td>{dayAndTimeOf(since)}</td>
                <td>{present ? "now, here" : dayAndTimeOf(seenAt)}</td>
                <td>{dayAndTimeOf(endsAt)}</td>
                <td>
                  {present ? null : (
                    <Command quiet onPress={() => end.mutate(id)}>
                      End this one
                    </Command>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </PageScroll>
      {others.length === 0 ? (
        <p>
          You are signed in nowhere else. A sign-in ends after two hours without a move, and after twelve in any case.
        </p>
      ) : (
        <Command onPress={() => end.mutate("others")}>End all but this one</Command>
      )}
    </section>
  );
}
