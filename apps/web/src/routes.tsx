import { linkPages } from "@cornerway/schema";
import { createRootRoute, createRoute, createRouter, lazyRouteComponent, redirect } from "@tanstack/react-router";
import { Ruled } from "./controls/Ruled.tsx";
import { Trouble } from "./controls/Trouble.tsx";
import { Gate } from "./room/Gate.tsx";
import { ProjectRoom } from "./room/ProjectRoom.tsx";
import { NothingHere } from "./screens/not-found/NothingHere.tsx";
import { SheetOf } from "./room/SheetOf.tsx";

const root = createRootRoute({ component: Gate, notFoundComponent: NothingHere });

const desk = createRoute({
  getParentRoute: () => root,
  path: "/",
  component: lazyRouteComponent(() => import("./screens/desk/Desk.tsx"), "Desk"),
});

const help = createRoute({
  getParentRoute: () => root,
  path: "/help",
  component: lazyRouteComponent(() => import("./screens/help/HelpPage.tsx"), "HelpPage"),
});

const verification = createRoute({
  getParentRoute: () => root,
  path: "/verification",
  component: lazyRouteComponent(() => import("./screens/verification/VerificationPage.tsx"), "VerificationPage"),
});

const linkPage = lazyRouteComponent(() => import("./screens/invitation/LinkPage.tsx"), "LinkPage");
const invitation = createRoute({
  getParentRoute: () => root,
  path: linkPages.invitation,
  component: linkPage,
});
const reader = createRoute({ getParentRoute: () => root, path: linkPages["reader-link"], component: linkPage });
const first = createRoute({ getParentRoute: () => root, path: linkPages["first-administrator"], component: linkPage });
const newPassword = createRoute({ getParentRoute: () => root, path: linkPages["new-password"], component: linkPage });

const forgotten = createRoute({
  getParentRoute: () => root,
  path: "/forgotten",
  component: lazyRouteComponent(() => import("./screens/forgotten/ForgottenPage.tsx"), "ForgottenPage"),
});

const notices = createRoute({
  getParentRoute: () => root,
  path: "/notices",
  component: lazyRouteComponent(() => import("./screens/notices/NoticesPage.tsx"), "NoticesPage"),
});

const account = createRoute({
  getParentRoute: () => root,
  path: "/account",
  component: lazyRouteComponent(() => import("./screens/account/AccountPage.tsx"), "AccountPage"),
});

const startProject = createRoute({
  getParentRoute: () => root,
  path: "/start-project",
  component: lazyRouteComponent(() => import("./screens/start-project/StartProjectPage.tsx"), "StartProjectPage"),
});

/** Beside the room of a project, not in it: whoever sees to its people may have no part in it. */
const people = createRoute({
  getParentRoute: () => root,
  path: "/projects/$projectId/people",
  component: lazyRouteComponent(() => import("./screens/people/PeoplePage.tsx"), "PeoplePage"),
});

const project = createRoute({ getParentRoute: () => root, path: "/projects/$projectId", component: ProjectRoom });

const landing = createRoute({ getParentRoute: () => project, path: "/", component: SheetOf });

const settings = createRoute({
  getParentRoute: () => project,
  path: "/settings",
  component: lazyRouteComponent(() => import("./screens/settings/SettingsPage.tsx"), "SettingsPage"),
});

const costBook = createRoute({
  getParentRoute: () => project,
  path: "/cost-book",
  component: lazyRouteComponent(() => import("./screens/cost-book/CostBookPage.tsx"), "CostBookPage"),
});

const premium = createRoute({
  getParentRoute: () => project,
  path: "/premium",
  component: lazyRouteComponent(() => import("./screens/premium/PremiumPage.tsx"), "PremiumPage"),
});

const options = createRoute({
  getParentRoute: () => project,
  path: "/alternatives",
  component: lazyRouteComponent(() => import("./screens/options/OptionsPage.tsx"), "OptionsPage"),
});

const seal = createRoute({
  getParentRoute: () => project,
  path: "/seal",
  component: lazyRouteComponent(() => import("./screens/seal/SealPage.tsx"), "SealPage"),
});

const permitSet = createRoute({
  getParentRoute: () => project,
  path: "/permit-set",
  component: lazyRouteComponent(() => import("./screens/permit-set/PermitSetPage.tsx"), "PermitSetPage"),
});

const survey = createRoute({
  getParentRoute: () => project,
  path: "/survey",
  component: lazyRouteComponent(() => import("./screens/survey/SurveyPage.tsx"), "SurveyPage"),
});

const site = createRoute({
  getParentRoute: () => project,
  path: "/site",
  component: lazyRouteComponent(() => import("./screens/site/SitePage.tsx"), "SitePage"),
});

const sheet = createRoute({
  getParentRoute: () => project,
  path: "/sheet/$sheet",
  component: SheetOf,
  beforeLoad: ({ params }) => {
    if (!/^[1-7]$/.test(params.sheet)) throw redirect({ to: "/projects/$projectId", params });
  },
});

export const router = createRouter({
  routeTree: root.addChildren([
    ...[desk, help, verification],
    ...[invitation, reader, first, newPassword, forgotten, account, notices, startProject, people],
    project.addChildren([landing, seal, permitSet, survey, site, settings, costBook, premium, options, sheet]),
  ]),
  defaultPreload: false,
  defaultPendingComponent: () => <Ruled label="Fetching the sheet" />,
  defaultErrorComponent: ({ error, reset }) => <Trouble error={error} again={reset} />,
});

declare module "@tanstack/react-router" {
  interface Register {
    router: typeof router;
  }
}
