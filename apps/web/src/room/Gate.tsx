import { Outlet } from "@tanstack/react-router";
import { useLayoutEffect } from "react";
import { Ruled } from "../controls/Ruled.tsx";
import { Trouble } from "../controls/Trouble.tsx";
import { useSession } from "../data/session.ts";
import { unitsSetting } from "../units/units-setting.ts";
import { SignInSheet } from "../screens/sign-in/SignInSheet.tsx";

/** Nobody sees a sheet before signing in. */
export function Gate() {
  const session = useSession();
  const personId = session.data?.person.id ?? null;
  useLayoutEffect(() => unitsSetting.forPerson(personId), [personId]);
  if (session.isPending) return <Ruled label="Looking who is here" />;
  if (session.isError && session.data === undefined)
    return <Trouble error={session.error} again={() => void session.refetch()} />;
  return session.data === null ? <SignInSheet /> : <Outlet />;
}
