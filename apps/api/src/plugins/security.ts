import helmet from "@fastify/helmet";
import fp from "fastify-plugin";
import { isOfApi } from "./is-of-api.ts";

const self = ["'self'"];
const none = ["'none'"];

/**
 * Everything the pages load comes from this origin; nothing is written inline; no other page may frame them. What the
 * API answers is one person's and is kept by no cache.
 */
export default fp(
  async (app) => {
    await app.register(helmet, {
      contentSecurityPolicy: {
        useDefaults: false,
        directives: {
          defaultSrc: none,
          scriptSrc: self,
          styleSrc: self,
          imgSrc: [...self, "data:"],
          fontSrc: self,
          connectSrc: self, // covers the WebSocket of this origin too: CSP level 3, section 6.7.2.8
          workerSrc: self,
          manifestSrc: self,
          objectSrc: none,
          baseUri: none,
          formAction: self,
          frameAncestors: none,
        },
      },
      xFrameOptions: { action: "deny" },
      referrerPolicy: { policy: "no-referrer" },
    });
    app.addHook("onSend", async (request, reply) => {
      if (isOfApi(request)) reply.header("cache-control", "no-store");
    });
  },
  { name: "security" },
);
