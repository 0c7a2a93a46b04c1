import { linkPages } from "@cornerway/schema";
import { Outlet, useLocation } from "@tanstack/react-router";
import { lazy, Suspense, useLayoutEffect } from "react";
import { Ruled } from "../controls/Ruled.tsx";
import { Trouble } from "../controls/Trouble.tsx";
import { useSession } from "../data/session.ts";
import { unitsSetting } from "../units/units-setting.ts";

const SignIn = lazy(async () => ({ default: (await import("../screens/sign-in/SignInSheet.tsx")).SignInSheet }));

/** Pages for people who cannot sign in yet, or not any more. */
const openPages: readonly string[] = [...Object.values(linkPages), "/forgotten"];

/** Nobody sees a sheet before signing in. */
export function Gate() {
  const session = useSession();
  const { pathname } = useLocation();
  const personId = session.data?.person.id ?? null;
  useLayoutEffect(() => unitsSetting.forPerson(personId), [personId]);
  if (openPages.includes(pathname)) return <Outlet />;
  if (session.isPending) return <Ruled label="Looking who is here" />;
  if (session.isError && session.data === undefined)
    return <Trouble error={session.error} again={() => void session.refetch()} />;
  if (session.data !== null) return <Outlet />;
  return (
    <Suspense fallback={<Ruled label="Fetching the sign-in sheet" />}>
      <SignIn />
    </Suspense>
  );
}
