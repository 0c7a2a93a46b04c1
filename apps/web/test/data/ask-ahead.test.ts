import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";

// There is no database of the browser here; what is kept is not what is asked for.
vi.mock("../../src/data/keep-db.ts", () => {
  const nothing = () => Promise.resolve(undefined);
  return { keepDb: { get: nothing, put: nothing, remove: nothing } };
});

const projectId = "00000000-0000-4000-8000-000000000009";
const person = { id: "00000000-0000-4000-8000-000000000001", name: "Nadia Wrensfield", email: "n@example.org" };
const project = (role: string) => ({
  ...{ id: projectId, name: "Chandler's Steps", place: "2 Quay Rise", client: "Pellmouth Ferry Society" },
  ...{ roles: [role], awaitsConfirmation: false, engineerToConfirm: false, revision: null, verdict: "not checked" },
  ...{ stamp: null, waitsFor: null, since: null, containers: 0, last: 0, members: [] },
});
const session = { person: { ...person, administrator: false }, csrfToken: "t".repeat(43) };

describe("askForAddress(pathname)", () => {
  let asked: string[];
  let answers: Record<string, unknown>;

  beforeEach(() => {
    vi.resetModules();
    asked = [];
    answers = {};
    localStorage.setItem("cornerway.signed-in", "yes");
    vi.stubGlobal("fetch", ({ url }: Request) => {
      const { pathname } = new URL(url);
      asked.push(pathname);
      const body = answers[pathname];
      const type = body === undefined ? "application/problem+json" : "application/json";
      const status = body === undefined ? 404 : 200;
      const said = body ?? { type: "about:blank", title: "Nothing here.", status, code: "not-found" };
      return Promise.resolve(new Response(JSON.stringify(said), { status, headers: { "content-type": type } }));
    });
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    localStorage.clear();
  });

  const opened = async (pathname: string, role: string) => {
    answers = { "/api/session": session, [`/api/projects/${projectId}`]: project(role) };
    const { askForAddress } = await import("../../src/ask-ahead.ts");
    askForAddress(pathname);
    const { queryClient } = await import("../../src/data/query-client.ts");
    const { projectKey } = await import("../../src/data/project.ts");
    await vi.waitFor(() =>
      expect(queryClient.getQueryState(projectKey(projectId))).toMatchObject({ error: null, status: "success" }),
    );
  };

  it("asks for session, project and draft before anything is shown", async () => {
    await opened(`/projects/${projectId}`, "architect");
    expect(asked).toEqual(["/api/session", `/api/projects/${projectId}`, `/api/projects/${projectId}/draft`]);
  });

  it("asks for no draft where the role may not read it", async () => {
    await opened(`/projects/${projectId}`, "owner");
    expect(asked).toEqual(["/api/session", `/api/projects/${projectId}`]);
  });

  it("asks for nothing where nobody signed in from this browser, or the address is of no project", async () => {
    const { askForAddress } = await import("../../src/ask-ahead.ts");
    askForAddress("/help");
    localStorage.clear();
    askForAddress(`/projects/${projectId}`);
    expect(asked).toEqual([]);
  });
});
