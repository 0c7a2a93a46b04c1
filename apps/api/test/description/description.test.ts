import { problemCodes, problems } from "@cornerway/schema";
import { Ajv2020 } from "ajv/dist/2020.js";
import supertest from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { describeApi } from "../../src/description/describe-api.ts";
import { ApiDocument } from "../../src/description/document.ts";
import { startService, type TestService } from "../support/service.ts";
import { registeredRoutes } from "../support/registered-routes.ts";

let service: TestService;
let served: object;
let document: ApiDocument;

beforeAll(async () => {
  service = await startService();
  served = (await supertest(service.app.server).get("/api/openapi.json").expect(200)).body;
  document = ApiDocument.parse(served);
});
afterAll(() => service.close());

const operations = () =>
  Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
  );

/** Everything under a key of this name, anywhere. */
function under(key: string, value: unknown): unknown[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) => [...(name === key ? [part] : []), ...under(key, part)]);
}

describe("GET /api/openapi.json", () => {
  it("is open to everyone and the same that the typed client is made from", async () => {
    expect(await describeApi()).toEqual(served);
  });

  it("is OpenAPI 3.1.0 whose schemas are JSON Schema 2020-12, by the meta-schema of that dialect", () => {
    expect(document.openapi).toBe("3.1.0");
    const ajv = new Ajv2020({ strict: false, validateFormats: false });
    for (const schema of [...under("schema", document.paths), ...Object.values(document.components.schemas)])
      expect(ajv.validateSchema(schema as object), JSON.stringify(ajv.errors)).toBe(true);
  });

  it("describes every route that is registered, and no other", async () => {
    const described = operations().map(({ path, method }) => `${method.toUpperCase()} ${path}`);
    expect(described.sort()).toEqual(await registeredRoutes());
  });

  it("names each operation once, with a summary and a chapter that there is", () => {
    const ids = operations().map(({ operation }) => operation.operationId);
    expect(new Set(ids).size).toBe(ids.length);
    const chapters = document.tags.map(({ name }) => name);
    for (const { operation } of operations()) {
      expect(operation.summary.length).toBeGreaterThan(5);
      expect(chapters).toContain(operation.tags[0]);
    }
  });

  it("has every component that is referred to, and none that is not", () => {
    const names = [...JSON.stringify(served).matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g)].map(
      ([, name]) => name,
    );
    expect([...new Set(names)].sort()).toEqual(Object.keys(document.components.schemas).sort());
    expect(under("$ref", served).every((ref) => String(ref).startsWith("#/components/schemas/"))).toBe(true);
  });

  it("gives every part of an address as a parameter, and no other as one", () => {
    for (const { path, operation } of operations()) {
      const inPath = operation.parameters.filter((parameter) => parameter.in === "path").map(({ name }) => name);
      expect(inPath.sort()).toEqual([...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort());
    }
  });

  it("says how whoever asks is known: by session, on writes with its token, or by access token; or that it is open", () => {
    for (const { path, method, operation } of operations()) {
      const ways = (operation.security ?? []).map((way) => Object.keys(way).sort().join(" "));
      if (ways.length === 0) continue;
      expect([...new Set(ways)], path).toContain(method === "get" ? "session" : "csrf session");
      for (const scheme of ways.flatMap((way) => way.split(" ")))
        expect(document.components.securitySchemes).toHaveProperty(scheme);
    }
  });

  it("tells every refusal as a problem of the catalogue under its own status, RFC 9457", () => {
    for (const { operation } of operations()) {
      const refusals = Object.entries(operation.responses).filter(([status]) => Number(status) >= 400);
      expect(refusals.map(([status]) => status)).toContain("500");
      for (const [status, { content }] of refusals) {
        expect(Object.keys(content ?? {})).toEqual(["application/problem+json"]);
        const codes = under("enum", content).flat();
        expect(codes.length).toBeGreaterThan(0);
        for (const code of codes) {
          expect(problemCodes).toContain(code);
          expect(String(problems[code as keyof typeof problems].status)).toBe(status);
        }
      }
    }
  });
});

describe("GET /api/reference", () => {
  it("is a page with every operation and every shape, that runs nothing and asks for nothing from elsewhere", async () => {
    const page = await supertest(service.app.server).get("/api/reference").expect(200);
    expect(page.headers["content-security-policy"]).toBe(
      "default-src 'none'; style-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
    );
    for (const { operation } of operations()) expect(page.text).toContain(`<article id="${operation.operationId}">`);
    for (const name of Object.keys(document.components.schemas)) expect(page.text).toContain(`id="shape-${name}"`);
    expect(page.text).not.toMatch(/<script|<style|style="|https?:\/\//);
    const targets = [...page.text.matchAll(/href="#([^"]+)"/g)].map(([, target]) => target);
    for (const target of new Set(targets)) expect(page.text).toContain(`id="${target}"`);
  });

  it("carries the cautions and is dressed by a style of its own", async () => {
    const page = await supertest(service.app.server).get("/api/reference").expect(200);
    expect(page.text).toContain("preliminary until sealed by a licensed engineer");
    await supertest(service.app.server)
      .get("/api/reference.css")
      .expect(200)
      .expect("content-type", /text\/css/);
  });
});
