import { linkPages } from "@cornerway/schema";
import { Outlet, useMatches } from "@tanstack/react-router";
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
  // Of the page that stands here, not of the address: on the way to another one the old page stands a little longer.
  const isOpen = useMatches({ select: (matches) => openPages.includes(matches.at(-1)?.pathname ?? "") });
  const personId = session.data?.person.id ?? null;
  useLayoutEffect(() => unitsSetting.forPerson(personId), [personId]);
  if (isOpen) return <Outlet />;
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
