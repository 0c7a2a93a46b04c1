import type { AddressInfo } from "node:net";
import fp from "fastify-plugin";
import type { Letter } from "../mail/mailer.ts";
import { openMailer } from "../mail/open-mailer.ts";

export interface MailOptions {
  smtpUrl: string | undefined;
  mailFolder: string;
  mailFrom: string;
  publicUrl: string | undefined;
}

declare module "fastify" {
  interface FastifyInstance {
    /** Sends a letter; false, with the reason in the log, when it did not leave. */
    sendLetter(letter: Letter): Promise<boolean>;
    /** Does something after the answer; ending the service waits for it. What goes wrong is in the log. */
    afterwards(work: () => Promise<unknown>): void;
    /** The whole address of a path of the pages, as people reach them. */
    addressOf(path: string): string;
  }
}

export default fp(
  async (app, { smtpUrl, mailFolder, mailFrom, publicUrl }: MailOptions) => {
    const mailer = openMailer({ smtpUrl, mailFolder, mailFrom });
    const underway = new Set<Promise<unknown>>();
    app.decorate("sendLetter", (letter) =>
      mailer.send(letter).then(
        () => true,
        (error: unknown) => {
          app.log.error(
            { name: error instanceof Error ? error.name : "unknown", code: codeOf(error) },
            "a letter did not leave",
          );
          return false;
        },
      ),
    );
    app.decorate("afterwards", (work) => {
      const done = work()
        .catch((error: unknown) => app.log.error({ err: error }, "what follows an answer failed"))
        .finally(() => underway.delete(done));
      underway.add(done);
    });
    // Never from the request: whoever sends one writes its Host header, and so would write where the link leads.
    app.decorate("addressOf", (path) => new URL(path, publicUrl ?? listeningAt(app.server.address())).href);
    app.addHook("onClose", async () => {
      await Promise.all(underway);
      mailer.close();
    });
  },
  { name: "mail" },
);

/** The reply of the mail server may repeat the letter, so only its code is told. */
const codeOf = (error: unknown): unknown =>
  typeof error === "object" && error !== null && "code" in error ? error.code : undefined;

function listeningAt(address: AddressInfo | string | null): string {
  if (address === null || typeof address === "string") return "http://localhost";
  return `http://${address.address.includes(":") ? `[${address.address}]` : address.address}:${address.port}`;
}
