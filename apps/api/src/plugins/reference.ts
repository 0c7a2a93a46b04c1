import fp from "fastify-plugin";
import { ApiDocument } from "../description/document.ts";
import { referencePage } from "../description/reference-page.ts";
import { referenceStyle } from "../description/reference-style.ts";

/** The page runs nothing and asks for nothing but its style. */
const policy = "default-src 'none'; style-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** The API description as a page to read, made when it is first asked for. */
export default fp(
  async (app) => {
    const route = { config: { open: true }, schema: { hide: true } };
    let page: string | undefined;
    app.get("/api/reference", route, async (_request, reply) => {
      page ??= referencePage(ApiDocument.parse(app.swagger()));
      return reply.header("content-security-policy", policy).type("text/html; charset=utf-8").send(page);
    });
    app.get("/api/reference.css", route, async (_request, reply) =>
      reply.type("text/css; charset=utf-8").send(referenceStyle),
    );
  },
  { name: "reference", dependencies: ["description"] },
);
