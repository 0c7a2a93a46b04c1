import fp from "fastify-plugin";

declare module "fastify" {
  interface FastifyInstance {
    /** What the key that signs heads of records is sealed under; undefined where none was given, and then none is signed. */
    recordSigning: { secretsKey: string | undefined };
  }
}

/** What the configuration says of signing heads, for the routes that give them. */
export default fp(
  async (app, { secretsKey }: { secretsKey: string | undefined }) => {
    app.decorate("recordSigning", { secretsKey });
  },
  { name: "record-signing" },
);
