import { existsSync } from "node:fs";
import path from "node:path";
import compress from "@fastify/compress";
import fastifyStatic from "@fastify/static";
import fp from "fastify-plugin";
import { sendProblem } from "./problems.ts";

/** Serves the built pages; addresses of screens get the one page, addresses under /api never do. */
export default fp(
  async (app, { webRoot }: { webRoot: string }) => {
    const page = existsSync(path.join(webRoot, "index.html"));
    await app.register(compress, { threshold: 1024 });
    if (page)
      await app.register(fastifyStatic, {
        root: webRoot,
        wildcard: false,
        preCompressed: true,
        cacheControl: false,
        setHeaders: setCaching,
      });
    app.setNotFoundHandler((request, reply) => {
      const screen = request.method === "GET" && !isOfService(request.url) && path.extname(pathOf(request.url)) === "";
      if (page && screen) return reply.sendFile("index.html");
      return sendProblem(reply, { code: "not-found" });
    });
  },
  { name: "web", dependencies: ["security"] },
);

const pathOf = (url: string): string => url.split("?", 1)[0] ?? "";

const isOfService = (url: string): boolean => /^\/(api|health|ready)(\/|\?|$)/.test(url);

/** Built assets carry their digest in their name; everything else is asked for anew. */
function setCaching(reply: { header(name: string, value: string): unknown }, file: string): void {
  const lasting = file.includes(`${path.sep}assets${path.sep}`);
  reply.header("cache-control", lasting ? "public, max-age=31536000, immutable" : "no-cache");
}
