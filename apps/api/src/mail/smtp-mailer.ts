import { createTransport } from "nodemailer";
import type { Mailer } from "./mailer.ts";

const longestWaitMs = 10_000;
const loopback = new Set(["localhost", "127.0.0.1", "[::1]"]);

/** Hands letters to a mail server, encrypted unless it is on this machine. `smtps` is encrypted from the start, RFC 8314. */
export function smtpMailer(url: string, from: string): Mailer {
  const { protocol, hostname, port, username, password } = new URL(url);
  const secure = protocol === "smtps:";
  const transport = createTransport({
    host: hostname,
    port: port === "" ? (secure ? 465 : 587) : Number(port),
    secure,
    requireTLS: !secure && !loopback.has(hostname),
    ...(username === "" ? {} : { auth: { user: decodeURIComponent(username), pass: decodeURIComponent(password) } }),
    connectionTimeout: longestWaitMs,
    greetingTimeout: longestWaitMs,
    socketTimeout: longestWaitMs,
  });
  return {
    send: async (letter) => {
      await transport.sendMail({ from, ...letter });
    },
    close: () => transport.close(),
  };
}
