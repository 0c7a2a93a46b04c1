import type { Session } from "@cornerway/schema";
import type { QueryClient } from "@tanstack/react-query";
import { unitsSetting } from "../units/units-setting.ts";
import { sessionKey } from "./session.ts";

/** Someone else stands at the desk: everything read for the one before is forgotten. */
export function changePerson(client: QueryClient, session: Session | null): void {
  client.removeQueries({ predicate: ({ queryKey }) => queryKey[0] !== sessionKey[0] });
  client.setQueryData(sessionKey, session);
  unitsSetting.forPerson(session?.person.id ?? null);
}
