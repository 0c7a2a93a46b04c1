import websocket from "@fastify/websocket";
import fp from "fastify-plugin";

/** The longest message taken: presence with a drag of 20 operations is about a third of it. */
const largestMessageBytes = 32 * 1024;

export default fp(
  async (app) => {
    await app.register(websocket, { options: { maxPayload: largestMessageBytes } });
  },
  { name: "sockets" },
);
