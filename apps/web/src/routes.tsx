import { createRootRoute, createRoute, createRouter, redirect } from "@tanstack/react-router";
import { Trouble } from "./controls/Trouble.tsx";
import { Gate } from "./room/Gate.tsx";
import { ProjectRoom } from "./room/ProjectRoom.tsx";
import { Desk } from "./screens/desk/Desk.tsx";
import { NothingHere } from "./screens/desk/NothingHere.tsx";
import { SheetOf } from "./room/SheetOf.tsx";

const root = createRootRoute({ component: Gate, notFoundComponent: NothingHere });

const desk = createRoute({ getParentRoute: () => root, path: "/", component: Desk });

const project = createRoute({ getParentRoute: () => root, path: "/projects/$projectId", component: ProjectRoom });

const landing = createRoute({ getParentRoute: () => project, path: "/", component: SheetOf });

const sheet = createRoute({
  getParentRoute: () => project,
  path: "/sheet/$sheet",
  component: SheetOf,
  beforeLoad: ({ params }) => {
    if (!/^[1-7]$/.test(params.sheet)) throw redirect({ to: "/projects/$projectId", params });
  },
});

export const router = createRouter({
  routeTree: root.addChildren([desk, project.addChildren([landing, sheet])]),
  defaultPreload: false,
  defaultErrorComponent: ({ error, reset }) => <Trouble error={error} again={reset} />,
});

declare module "@tanstack/react-router" {
  interface Register {
    router: typeof router;
  }
}
