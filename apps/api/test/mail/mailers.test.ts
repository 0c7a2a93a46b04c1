import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { fileMailer } from "../../src/mail/file-mailer.ts";
import { invitationLetter } from "../../src/mail/letters.ts";
import type { Mailer } from "../../src/mail/mailer.ts";
import { smtpMailer } from "../../src/mail/smtp-mailer.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { lettersIn, linkIn } from "../support/letters.ts";
import { mailServer, type MailServer } from "../support/mail-server.ts";
import { startService } from "../support/service.ts";

let folder: string;
let server: MailServer;

beforeEach(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-mailers-"));
  server = await mailServer();
});
afterEach(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

const from = "Cornerway <cornerway@plans.example>";
const made = {
  ...{ id: "5e1f0a10-0000-4000-8000-0000000000ff", email: "ilse@tarn.example", role: "owner" as const },
  ...{ invitedBy: "Jürgen Ødegård\r\nBcc: all@elsewhere.example", madeAt: "2027-01-01T00:00:00.000Z" },
  ...{ expiresAt: "2027-01-08T00:00:00.000Z", partEndsAt: null },
};
const address = `https://plans.example/invitation#${"A".repeat(43)}`;

const ways: [string, () => Mailer, () => string[]][] = [
  ["a folder", () => fileMailer(folder, from), () => lettersIn(folder)],
  ["a mail server", () => smtpMailer(server.url, from), () => server.letters],
];

describe.each(ways)("letters by way of %s", (_way, open, letters) => {
  it("arrive whole, with the link in one piece, and no name in them adds a header", async () => {
    const mailer = open();
    await mailer.send(invitationLetter(made, "Millrace Yard", address, null));
    mailer.close();
    expect(letters()).toHaveLength(1);
    const [head = "", body = ""] = (letters()[0] ?? "").split(/\r?\n\r?\n/, 2);
    expect(head).toMatch(/^From: Cornerway <cornerway@plans\.example>$/m);
    expect(head).toMatch(/^To: ilse@tarn\.example$/m);
    expect(head).not.toMatch(/^Bcc:/im);
    expect(body.length).toBeGreaterThan(0);
    expect(letters()[0]?.replaceAll(/=\r?\n/g, "")).toContain("invitation#");
  });
});

it("a letter in a folder holds the link as it was told", async () => {
  const mailer = fileMailer(folder, from);
  await mailer.send(invitationLetter(made, "Millrace Yard", address, null));
  expect(linkIn(lettersIn(folder)[0])).toBe(`/invitation#${"A".repeat(43)}`);
  for (const name of readdirSync(folder)) expect(statSync(path.join(folder, name)).mode & 0o077).toBe(0);
});

it("a letter of invitation holds the head of the record as `verify --head` takes it, and the fingerprint of its key", () => {
  const head = { project: made.id, number: 7, head: "3e".repeat(32), time: made.madeAt };
  const { text } = invitationLetter(made, "Millrace Yard", address, {
    ...{ ...head, fingerprint: "b7".repeat(32), signature: "A".repeat(86) },
  });
  expect(text).toContain(`\nhead 7:${"3e".repeat(32)}\nsigned by the key ${"b7".repeat(32)}\n`);
  expect(invitationLetter(made, "Millrace Yard", address, null).text).not.toContain("signed by the key");
});

it("a mail server off this machine is given no letter unencrypted", async () => {
  const away = await mailServer({ host: "127.0.0.2" }); // reached over loopback, and not among the names that are let off
  const mailer = smtpMailer(away.url, from);
  await expect(mailer.send(invitationLetter(made, "Millrace Yard", address, null))).rejects.toMatchObject({
    code: "ETLS",
  });
  mailer.close();
  expect(away.letters).toEqual([]);
  await away.close();
});

describe("a letter that does not leave", () => {
  it("is told to whoever asks someone in, who has the link; the log has its reason and nothing of the letter", async () => {
    const refusing = await mailServer({ refuses: true });
    const service = await startService({ SMTP_URL: refusing.url });
    const owner = await service.signIn("owner");
    const projectId = await service.openProject();
    const body = { email: "ilse@tarn.example", role: "architect", partEndsAt: null };
    const answer = await owner.post(`/api/projects/${projectId}/invitations`, body).expect(201);
    expect(answer.body).toMatchObject({ letterSent: false });
    const log = service.log.join("");
    expect(log).toContain("a letter did not leave");
    expect(log).not.toContain(String(answer.body.path).split("#")[1]);
    expectProblem(await owner.get("/api/nothing"), "not-found");
    await service.close();
    await refusing.close();
  });

  it("to a folder that cannot be written is no fault of the request either", async () => {
    const closed = path.join(folder, "closed");
    mkdirSync(closed);
    writeFileSync(path.join(closed, "mail"), "a file where the folder would be");
    const mailer = fileMailer(path.join(closed, "mail"), from);
    await expect(mailer.send(invitationLetter(made, "Millrace Yard", address, null))).rejects.toThrow(/EEXIST|ENOTDIR/);
  });
});
