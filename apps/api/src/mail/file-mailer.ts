import { randomUUID } from "node:crypto";
import { mkdir, rename, writeFile } from "node:fs/promises";
import path from "node:path";
import { createTransport } from "nodemailer";
import type { Mailer } from "./mailer.ts";

/** Lays letters as RFC 5322 files into a folder, readable by the owner alone, since they hold links that open accounts. */
export function fileMailer(folder: string, from: string): Mailer {
  const transport = createTransport({ streamTransport: true, buffer: true, newline: "unix" });
  return {
    send: async (letter) => {
      const { message } = await transport.sendMail({ from, ...letter });
      if (!Buffer.isBuffer(message)) throw new TypeError("the letter did not come out as bytes");
      await mkdir(folder, { recursive: true, mode: 0o700 });
      const name = `${new Date().toISOString().replaceAll(":", "-")}-${randomUUID().slice(0, 8)}.eml`;
      const unfinished = path.join(folder, `.${name}.unfinished`);
      await writeFile(unfinished, message, { mode: 0o600 });
      await rename(unfinished, path.join(folder, name)); // whoever watches the folder sees whole letters only
    },
    close: () => transport.close(),
  };
}
