import { useQueryClient } from "@tanstack/react-query";
import { Command } from "../../controls/Command.tsx";
import { changePerson } from "../../data/change-person.ts";
import { signOut } from "../../data/session.ts";

/** Leaves the desk. */
export function SignOut() {
  const client = useQueryClient();
  const leave = async () => {
    await signOut();
    changePerson(client, null);
  };
  return (
    <Command quiet onPress={() => void leave()}>
      Leave the desk
    </Command>
  );
}
