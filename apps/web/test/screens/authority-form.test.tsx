import { usualAuthority, type AuthorityProfile, type Project } from "@cornerway/schema";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { cleanup, fireEvent, render, screen, waitFor } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { HereBoard } from "../../src/room/here-board.ts";
import { RoomContext } from "../../src/room/room-context.ts";
import { AuthoritySection } from "../../src/screens/settings/AuthoritySection.tsx";

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

/** The section as someone with a role sees it, and the profiles it sends. */
function show(role: Project["roles"][number]): AuthorityProfile[] {
  const sent: AuthorityProfile[] = [];
  vi.stubGlobal("fetch", async (request: Request) => {
    if (request.method === "POST") sent.push(await request.json());
    return Response.json({ profile: sent.at(-1) ?? usualAuthority, set: null });
  });
  const project: Project = {
    ...{ id: "00000000-0000-4000-8000-000000000001", name: "Lock Lane", place: "Weir", client: "M. Sorrel" },
    ...{ roles: [role], awaitsConfirmation: false, engineerToConfirm: false, members: [], revision: "A" },
    ...{ verdict: "not checked", stamp: null, waitsFor: null, since: null, containers: 1, last: 3 },
  };
  const me = { id: project.id, name: "Ines", email: "i@example.com", administrator: false };
  render(
    <QueryClientProvider client={new QueryClient()}>
      <RoomContext.Provider
        value={{
          ...{ project, me, draft: null },
          ...{ lineDownSince: null, here: new HereBoard("nobody"), tell: () => undefined, say: () => undefined },
        }}
      >
        <AuthoritySection />
      </RoomContext.Provider>
    </QueryClientProvider>,
  );
  return sent;
}

const choose = (label: RegExp, value: string) => fireEvent.change(screen.getByLabelText(label), { target: { value } });
const press = () => fireEvent.click(screen.getByRole("button", { name: /^Lay down/ }));

describe("what the authority asks", () => {
  it("is laid down whole: marks, deltas, and what a reply names", async () => {
    const sent = show("architect");
    await screen.findByText(/^As is usual/);
    choose(/^Authority/, " Quarry County ");
    choose(/are marked by/, "deltas");
    choose(/^In a delta/, "issue number");
    fireEvent.click(screen.getByLabelText(/names the page/));
    press();
    await waitFor(() => expect(sent).toHaveLength(1));
    expect(sent[0]).toEqual({
      ...{ name: "Quarry County", marks: "deltas", delta: "issue number", numbered: true },
      ...{ earlierDeltas: "taken off", replyNames: ["page"] },
    });
  });

  it("asks nothing of deltas where the set is to be clean", async () => {
    show("engineer");
    await screen.findByText(/^As is usual/);
    choose(/are marked by/, "none");
    expect(screen.queryByLabelText(/^In a delta/)).toBeNull();
    expect(screen.queryByLabelText(/^Each reply names the detail/)).not.toBeNull();
  });

  it("is read by a reader, and laid down by none", async () => {
    const sent = show("reader");
    await screen.findByText(/^As is usual/);
    press();
    expect(screen.getByRole("button", { name: /^Lay down/ }).getAttribute("aria-disabled")).toBe("true");
    expect(sent).toEqual([]);
  });
});
