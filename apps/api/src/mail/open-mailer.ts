import type { Config } from "../config.ts";
import { fileMailer } from "./file-mailer.ts";
import type { Mailer } from "./mailer.ts";
import { smtpMailer } from "./smtp-mailer.ts";

/** The way letters leave: to a mail server where one is named, otherwise into a folder. */
export const openMailer = ({
  smtpUrl,
  mailFolder,
  mailFrom,
}: Pick<Config, "smtpUrl" | "mailFolder" | "mailFrom">): Mailer =>
  smtpUrl === undefined ? fileMailer(mailFolder, mailFrom) : smtpMailer(smtpUrl, mailFrom);
