import { useQueryClient } from "@tanstack/react-query";
import { Command } from "../../controls/Command.tsx";
import { sessionKey, signOut } from "../../data/session.ts";

/** Leaves the desk. */
export function SignOut() {
  const client = useQueryClient();
  const leave = async () => {
    await signOut();
    client.clear();
    client.setQueryData(sessionKey, null);
  };
  return (
    <Command quiet onPress={() => void leave()}>
      Leave the desk
    </Command>
  );
}
