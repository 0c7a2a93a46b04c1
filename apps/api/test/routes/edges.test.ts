import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { brotliCompressSync } from "node:zlib";
import supertest from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectProblem } from "../support/expect-problem.ts";
import { password, startService, type TestService } from "../support/service.ts";

let service: TestService;
let webRoot: string;

beforeAll(async () => {
  webRoot = mkdtempSync(path.join(os.tmpdir(), "cornerway-web-"));
  mkdirSync(path.join(webRoot, "assets"));
  writeFileSync(path.join(webRoot, "index.html"), "<!doctype html><title>The sheet</title>");
  writeFileSync(path.join(webRoot, "assets/main-1a2b3c.js"), "export {};");
  writeFileSync(path.join(webRoot, "assets/main-1a2b3c.js.br"), brotliCompressSync("export {}; // packed"));
  service = await startService({ WEB_ROOT: webRoot, REQUESTS_PER_MINUTE: "60" });
});
afterAll(async () => {
  await service.close();
  rmSync(webRoot, { recursive: true });
});

const get = (address: string) => supertest(service.app.server).get(address);

describe("the pages", () => {
  it.each(["/", "/projects/1/sheet/2", "/signed-out?from=here"])(
    "%s is the one page, asked for anew each time",
    async (address) => {
      const answer = await get(address).expect(200);
      expect(answer.text).toContain("The sheet");
      expect(answer.headers["cache-control"]).toBe("no-cache");
    },
  );

  it("are built files that browsers may keep", async () => {
    const answer = await get("/assets/main-1a2b3c.js").expect(200);
    expect(answer.headers["cache-control"]).toBe("public, max-age=31536000, immutable");
  });

  it("are sent as they were packed at the build to browsers that unpack them, and bare to others", async () => {
    const packed = await get("/assets/main-1a2b3c.js").set("accept-encoding", "gzip, br").expect(200);
    expect(packed.headers).toMatchObject({ "content-encoding": "br", vary: expect.stringMatching(/accept-encoding/i) });
    expect(packed.headers["content-type"]).toMatch(/^(text|application)\/javascript/);
    expect(packed.headers["cache-control"]).toBe("public, max-age=31536000, immutable");
    expect(packed.text).toBe("export {}; // packed");
    const bare = await get("/assets/main-1a2b3c.js").set("accept-encoding", "identity").expect(200);
    expect(bare.text).toBe("export {};");
  });

  it.each(["/api", "/api/", "/api/nothing", "/assets/gone.js", "/health/x"])(
    "%s is never answered with the page",
    async (address) => {
      expectProblem(await get(address), "not-found");
    },
  );

  it("load nothing from elsewhere and run nothing written inline", async () => {
    const policy = (await get("/")).headers["content-security-policy"]?.split(";").sort();
    expect(policy).toEqual([
      ...["base-uri 'none'", "connect-src 'self'", "default-src 'none'", "font-src 'self'", "form-action 'self'"],
      ...[
        "frame-ancestors 'none'",
        "img-src 'self' data:",
        "manifest-src 'self'",
        "object-src 'none'",
        "script-src 'self'",
        "style-src 'self'",
        "worker-src 'self'",
      ],
    ]);
  });
});

describe("watching", () => {
  it("/health says that the process is up, /ready that it reaches its database", async () => {
    expect((await get("/health").expect(200)).body).toEqual({ status: "up" });
    expect((await get("/ready").expect(200)).body).toEqual({ status: "ready" });
  });

  it("logs no password, token, cookie or query", async () => {
    const browser = await service.signIn("architect");
    await browser.get("/api/projects?secret=in-the-query");
    await browser.post("/api/session", { email: "architect@people.example", password: "a wrong secret" });
    const log = service.log.join("");
    expect(log).toContain('"route":"/api/session","status":201');
    for (const secret of [
      password,
      "a wrong secret",
      "in-the-query",
      browser.csrfToken,
      browser.cookie.split("=")[1] ?? "",
    ]) {
      expect(log).not.toContain(secret);
    }
    expect(log).not.toMatch(/cookie|authorization|argon2id/i);
  });
});

describe("one browser that asks too much", () => {
  it("is told to wait, while others are served", async () => {
    const [greedy, other] = [await service.signIn("engineer"), await service.signIn("checker")];
    for (let n = 0; n < 60; n += 1) await greedy.get("/api/session").expect(200);
    expectProblem(await greedy.get("/api/session"), "too-many-tries");
    await other.get("/api/session").expect(200);
  });
});
