import { Outlet } from "@tanstack/react-router";
import { Ruled } from "../controls/Ruled.tsx";
import { Trouble } from "../controls/Trouble.tsx";
import { useSession } from "../data/session.ts";
import { SignInSheet } from "../screens/sign-in/SignInSheet.tsx";

/** Nobody sees a sheet before signing in. */
export function Gate() {
  const session = useSession();
  if (session.isPending) return <Ruled label="Looking who is here" />;
  if (session.isError && session.data === undefined)
    return <Trouble error={session.error} again={() => void session.refetch()} />;
  return session.data === null ? <SignInSheet /> : <Outlet />;
}
