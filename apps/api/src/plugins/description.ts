import swagger from "@fastify/swagger";
import fp from "fastify-plugin";
import { tags } from "../description/described.ts";
import { securitySchemes } from "../description/security-of.ts";
import { transform, transformObject } from "../description/transform.ts";

const info = {
  title: "Cornerway",
  version: "1",
  description:
    "Schemes of buildings made from shipping containers, their review and their record. Every result is screening, " +
    "preliminary until sealed by a licensed engineer. What is refused is told as a problem, RFC 9457.",
};

/** Describes every route registered after it as OpenAPI 3.1, from the zod schemas that the routes are held to. */
export default fp(
  async (app) => {
    await app.register(swagger, {
      openapi: {
        openapi: "3.1.0",
        info,
        tags: Object.entries(tags).map(([name, description]) => ({ name, description })),
        components: { securitySchemes },
      },
      transform,
      transformObject,
    });
    app.get("/api/openapi.json", { config: { open: true }, schema: { hide: true } }, async () => app.swagger());
  },
  { name: "description" },
);
