import { afterEach, describe, expect, it, vi } from "vitest";
import { z } from "zod";
import { api, read, readPages } from "../../src/data/api/client.ts";
import { csrfToken } from "../../src/data/csrf-token.ts";
import { isProblem, NoAnswer, ServiceProblem, UnreadAnswer } from "../../src/data/http.ts";

const answerWith = (status: number, body: unknown, headers: Record<string, string> = {}) => {
  const fetched = vi.fn<(request: Request) => Promise<Response>>(
    async () => new Response(JSON.stringify(body), { status, headers }),
  );
  vi.stubGlobal("fetch", fetched);
  return fetched;
};

const projectId = "00000000-0000-4000-8000-000000000001";
const draft = () => api.GET("/api/projects/{projectId}/draft", { params: { path: { projectId } } });

afterEach(() => vi.unstubAllGlobals());

describe("read(shape, call)", () => {
  it("reads the answer by its shape and refuses one of another shape", async () => {
    answerWith(200, { name: "Chandler's Steps" });
    await expect(read(z.strictObject({ name: z.string() }), draft())).resolves.toEqual({ name: "Chandler's Steps" });
    await expect(read(z.strictObject({ place: z.string() }), draft())).rejects.toThrow(UnreadAnswer);
  });

  it("turns problem details (RFC 9457) into a ServiceProblem that keeps the code", async () => {
    answerWith(409, { type: "about:blank", title: "Nothing has changed.", status: 409, code: "revision-unchanged" });
    const refused: unknown = await read(z.unknown(), draft()).catch((error: unknown) => error);
    expect(refused).toBeInstanceOf(ServiceProblem);
    expect(isProblem(refused, "revision-unchanged")).toBe(true);
    expect(isProblem(refused, "not-found")).toBe(false);
  });

  it("an answer that is no problem and no success is one of its own", async () => {
    answerWith(502, "<html>");
    await expect(read(z.unknown(), draft())).rejects.toMatchObject({ problem: { status: 502, code: "internal" } });
  });

  it("takes an answer without a body", async () => {
    vi.stubGlobal(
      "fetch",
      vi.fn(async () => new Response(null, { status: 204 })),
    );
    await expect(read(z.unknown(), api.DELETE("/api/session"))).resolves.toBeUndefined();
  });

  it("a dead line is NoAnswer; a call that was called off is not", async () => {
    vi.stubGlobal(
      "fetch",
      vi.fn(async () => Promise.reject(new TypeError("fetch failed"))),
    );
    await expect(read(z.unknown(), draft())).rejects.toBeInstanceOf(NoAnswer);
    const off = new AbortController();
    off.abort();
    const called = api.GET("/api/session", { signal: off.signal });
    await expect(read(z.unknown(), called)).rejects.not.toBeInstanceOf(NoAnswer);
  });
});

describe("a call of the client", () => {
  it("goes to this origin, with the address filled in and the body as JSON", async () => {
    const fetched = answerWith(200, {});
    await api.POST("/api/session", { body: { email: "ana@people.example", password: "words" } });
    await draft();
    const [signIn, read] = fetched.mock.calls.map(([request]) => request);
    expect(signIn?.url).toBe(`${location.origin}/api/session`);
    expect(signIn?.headers.get("content-type")).toBe("application/json");
    expect(await signIn?.json()).toEqual({ email: "ana@people.example", password: "words" });
    expect(read?.url).toBe(`${location.origin}/api/projects/${projectId}/draft`);
  });

  it("carries the token of the sign-in when it writes, and not when it reads", async () => {
    const fetched = answerWith(200, {});
    csrfToken.value = "token-of-this-sign-in";
    await api.DELETE("/api/session");
    await draft();
    expect(fetched.mock.calls.map(([request]) => request.headers.get("csrf-token"))).toEqual([
      "token-of-this-sign-in",
      null,
    ]);
  });
});

describe("readPages(shape, ask)", () => {
  it("follows the links to the end and gives all pages as one list", async () => {
    const pages = [
      { body: [1, 2], link: '</api/projects?limit=2&after=b>; rel="next"' },
      { body: [3], link: undefined },
    ];
    vi.stubGlobal(
      "fetch",
      vi.fn(async () => {
        const { body, link } = pages.shift() ?? { body: [], link: undefined };
        return new Response(JSON.stringify(body), { headers: link === undefined ? {} : { link } });
      }),
    );
    const asked: (string | undefined)[] = [];
    const all = await readPages(z.array(z.number()), (after) => {
      asked.push(after);
      return api.GET("/api/projects", { params: { query: { after } } });
    });
    expect(all).toEqual([1, 2, 3]);
    expect(asked).toEqual([undefined, "b"]);
  });
});
