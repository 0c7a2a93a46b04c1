import { afterEach, describe, expect, it, vi } from "vitest";
import { z } from "zod";
import { csrfToken } from "../../src/data/csrf-token.ts";
import { http, isProblem, NoAnswer, ServiceProblem } from "../../src/data/http.ts";

const answerWith = (status: number, body: unknown) =>
  vi.stubGlobal(
    "fetch",
    vi.fn(async () => new Response(JSON.stringify(body), { status })),
  );

afterEach(() => vi.unstubAllGlobals());

describe("http(shape, path)", () => {
  it("reads the answer by its shape and refuses one of another shape", async () => {
    answerWith(200, { name: "Chandler's Steps" });
    await expect(http(z.strictObject({ name: z.string() }), "/api/x")).resolves.toEqual({ name: "Chandler's Steps" });
    await expect(http(z.strictObject({ place: z.string() }), "/api/x")).rejects.toThrow(z.ZodError);
  });

  it("turns problem details (RFC 9457) into a ServiceProblem that keeps the code", async () => {
    answerWith(409, { type: "about:blank", title: "Nothing has changed.", status: 409, code: "revision-unchanged" });
    const refused: unknown = await http(z.unknown(), "/api/x").catch((error: unknown) => error);
    expect(refused).toBeInstanceOf(ServiceProblem);
    expect(isProblem(refused, "revision-unchanged")).toBe(true);
    expect(isProblem(refused, "not-found")).toBe(false);
  });

  it("an answer that is no problem and no success is one of its own", async () => {
    answerWith(502, "<html>");
    await expect(http(z.unknown(), "/api/x")).rejects.toMatchObject({ problem: { status: 502, code: "internal" } });
  });

  it("a dead line is NoAnswer", async () => {
    vi.stubGlobal(
      "fetch",
      vi.fn(async () => Promise.reject(new TypeError("fetch failed"))),
    );
    await expect(http(z.unknown(), "/api/x")).rejects.toBeInstanceOf(NoAnswer);
  });

  it("writes carry the token of the sign-in, reads do not", async () => {
    answerWith(200, {});
    csrfToken.value = "token-of-this-sign-in";
    await http(z.unknown(), "/api/x", { method: "POST", body: { a: 1 } });
    await http(z.unknown(), "/api/x");
    const headers = vi.mocked(fetch).mock.calls.map(([, asked]) => new Headers(asked?.headers).get("csrf-token"));
    expect(headers).toEqual(["token-of-this-sign-in", null]);
  });
});
