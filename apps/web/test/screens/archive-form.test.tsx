import { archiveLimits } from "@cornerway/schema";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import type { ReactNode } from "react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { ArchiveForm } from "../../src/screens/start-project/ArchiveForm.tsx";

vi.mock("@tanstack/react-router", () => ({
  Link: ({ children }: { children: ReactNode }) => <a href="/">{children}</a>,
}));

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const key = "ab".repeat(32);
const archive = () => new File(["PK"], "lock-lane.zip", { type: "application/zip" });
const told = {
  ...{ projectId: "00000000-0000-4000-8000-000000000001", name: "Lock Lane", entries: 12 },
  ...{ signedBy: key, signedAt: "2027-03-10T09:00:00.000Z" },
};
const refusal = {
  ...{ type: "about:blank", title: "Archive refused", status: 422, code: "archive-refused" },
  detail: "record.json: is missing",
};

/** The page, and what it sends to a service that answers so. */
function show(status: number, body: unknown) {
  const answer = async () => Response.json(body, { status });
  const fetched = vi.fn<(address: string, asked: RequestInit) => Promise<Response>>(answer);
  vi.stubGlobal("fetch", fetched);
  render(
    <QueryClientProvider client={new QueryClient()}>
      <ArchiveForm />
    </QueryClientProvider>,
  );
  return fetched;
}
const choose = (file: File) =>
  fireEvent.change(screen.getByLabelText(/^Archive of a project/), { target: { files: [file] } });
const name = (words: string) => fireEvent.change(screen.getByLabelText(/^Fingerprint/), { target: { value: words } });
const press = () => fireEvent.click(screen.getByRole("button", { name: /^Bring it in/ }));

describe("bringing a project in from its archive", () => {
  it("sends the file with the fingerprint that was named, and says who signed what is here now", async () => {
    const fetched = show(201, told);
    choose(archive());
    name(key.toUpperCase().replaceAll(/(.{4})/g, "$1 "));
    press();
    expect((await screen.findByRole("status")).textContent).toContain("brought in, signed");
    expect(screen.getByRole("status").textContent).toContain("the one you named");
    expect(fetched.mock.calls[0]?.[0]).toBe(`/api/archives?key=${key}`);
  });

  it("says that its origin is not proved where no fingerprint was named", async () => {
    show(201, told);
    choose(archive());
    press();
    expect((await screen.findByRole("status")).textContent).toContain("its origin is not proved");
  });

  it("says in the service's words why an archive is refused", async () => {
    show(422, refusal);
    choose(archive());
    press();
    expect((await screen.findByRole("alert")).textContent).toBe("record.json: is missing");
    expect(screen.queryByRole("status")).toBeNull();
  });

  it("sends nothing without a file, beyond the size that is taken, or with a fingerprint that is none", () => {
    const fetched = show(201, told);
    press();
    const large = archive();
    Object.defineProperty(large, "size", { value: archiveLimits.fileBytes + 1 });
    choose(large);
    press();
    choose(archive());
    name("12 34");
    press();
    expect(screen.getByRole("alert").textContent).toContain("64 signs");
    expect(fetched).not.toHaveBeenCalled();
  });
});
