import websocket from "@fastify/websocket";
import fp from "fastify-plugin";

/** The longest message taken: presence with a drag of 20 operations is about a third of it. */
const largestMessageBytes = 32 * 1024;

/** A socket that broke the protocol has this long to hear its close code (RFC 6455 section 7.4.1) before it is cut. */
const hearWhyMs = 1_000;

export default fp(
  async (app) => {
    await app.register(websocket, {
      options: { maxPayload: largestMessageBytes },
      errorHandler: (error, socket, request) => {
        request.log.info({ why: error.message }, "a socket broke the protocol");
        setTimeout(() => socket.terminate(), hearWhyMs).unref();
      },
    });
  },
  { name: "sockets" },
);
