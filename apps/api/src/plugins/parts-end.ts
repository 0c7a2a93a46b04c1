import fp from "fastify-plugin";
import { expireParts } from "../services/expire-parts.ts";

/** A part that is over is good for nothing at once; that its end is in the record may take this long. */
const everyMs = 5_000;

export default fp(
  async (app) => {
    let timer: NodeJS.Timeout | undefined;
    let underway: Promise<void> | undefined;
    const look = () => {
      underway ??= expireParts(app.database)
        .catch((error: unknown) => app.log.warn({ err: error }, "could not take ended parts away; trying again"))
        .finally(() => (underway = undefined));
    };
    app.addHook("onReady", async () => {
      timer = setInterval(look, everyMs);
    });
    app.addHook("preClose", async () => {
      clearInterval(timer);
      await underway;
    });
  },
  { name: "parts-end", dependencies: ["database"] },
);
