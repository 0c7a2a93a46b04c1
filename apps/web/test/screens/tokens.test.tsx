import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, describe, expect, it, vi } from "vitest";
import { TokensSection } from "../../src/screens/account/TokensSection.tsx";

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const token = {
  ...{ id: "00000000-0000-4000-8000-000000000001", name: "nightly report", prefix: "cw_0a1b2c3d", scopes: ["read"] },
  ...{ madeAt: "2027-03-01T10:00:00.000Z", expiresAt: "2027-06-01T10:00:00.000Z", lastUsedAt: null, revokedAt: null },
};

/** A service that has one token and makes another when it is asked. */
function show() {
  const sent: { method: string; url: string; key: string | null; body: unknown }[] = [];
  const answer = async (request: Request): Promise<Response> => {
    const { method, url, headers } = request;
    sent.push({
      method,
      url,
      key: headers.get("idempotency-key"),
      body: method === "POST" ? await request.json() : null,
    });
    if (method === "DELETE") return new Response(null, { status: 204 });
    if (method === "GET") return Response.json([token]);
    return Response.json({ ...token, name: "drawing script", secret: "cw_0a1b2c3d_the-secret" }, { status: 201 });
  };
  vi.stubGlobal("fetch", vi.fn(answer));
  const client = new QueryClient({ defaultOptions: { queries: { retry: false } } });
  render(
    <QueryClientProvider client={client}>
      <TokensSection />
    </QueryClientProvider>,
  );
  return sent;
}

describe("<TokensSection>", () => {
  it("lists the tokens that are good, with what they may and when they end, and never a secret", async () => {
    show();
    const row = await screen.findByRole("row", { name: /nightly report/ });
    expect(row.textContent).toContain("cw_0a1b2c3d");
    expect(row.textContent).toContain("never");
    expect(row.textContent).toContain("1 Jun 2027");
  });

  it("makes one under a key of its own and shows its secret once", async () => {
    const sent = show();
    await userEvent.type(await screen.findByLabelText("What the new token is for"), "drawing script");
    await userEvent.click(screen.getByLabelText("draw, and send revisions"));
    await userEvent.click(screen.getByRole("button", { name: "Make a token" }));
    expect(await screen.findByDisplayValue("cw_0a1b2c3d_the-secret")).toBeTruthy();
    const made = sent.find(({ method }) => method === "POST");
    expect(made?.body).toEqual({ name: "drawing script", scopes: ["read", "draw"], days: 90 });
    expect(made?.key).toMatch(/^[0-9a-f-]{36}$/);
  });

  it("asks what it is for and what it may do before it sends anything", async () => {
    const sent = show();
    await userEvent.click(await screen.findByLabelText("read what you may see"));
    await userEvent.click(screen.getByRole("button", { name: "Make a token" }));
    expect((await screen.findAllByRole("alert")).map(({ textContent }) => textContent)).toEqual([
      "Say what it is for.",
      "Choose what it may do.",
    ]);
    expect(sent.filter(({ method }) => method === "POST")).toEqual([]);
  });

  it("withdraws one by its id", async () => {
    const sent = show();
    await userEvent.click(await screen.findByRole("button", { name: "Withdraw" }));
    await vi.waitFor(() => expect(sent.find(({ method }) => method === "DELETE")?.url).toMatch(/\/api\/tokens\/0{8}-/));
  });
});
