import {
  cautionLine,
  concerns,
  maySee,
  mayReadEntry,
  Notices,
  recordKinds,
  roles,
  SignedHead,
} from "@cornerway/schema";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { readConfig } from "../../src/config.ts";
import { isDue, sendNotices } from "../../src/worker/send-notices.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { lettersIn } from "../support/letters.ts";
import { mailServer } from "../support/mail-server.ts";
import { openReviewRoom, signInAll, type ReviewRoom } from "../support/review-room.ts";
import { note, place } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

const secretsKey = "f0".repeat(32);
let service: TestService;
let room: ReviewRoom;
let by: ReviewRoom["by"];

beforeAll(async () => {
  service = await startService({ WORKER: "apart", SECRETS_KEY: secretsKey });
  by = await signInAll(service);
});
afterAll(() => service.close());
beforeEach(async () => {
  await service.owner.connection.$executeRaw`delete from "notice_setting"`;
  room = await openReviewRoom(service, by);
});

async function kindsFor(browser: Browser): Promise<string[]> {
  const { notices } = Notices.parse((await browser.get("/api/notices").expect(200)).body);
  return notices.filter(({ projectId }) => projectId === room.projectId).map(({ entry }) => entry.kind);
}

const choose = (browser: Browser, letters: string) => browser.post("/api/account/notices", { letters });

/** One turn of the worker. */
async function turn(more: Record<string, string> = {}): Promise<void> {
  const environment = { DATABASE_URL: service.database.serviceUrl, MAIL_FOLDER: service.mailFolder };
  const config = readConfig({ ...environment, SECRETS_KEY: secretsKey, PUBLIC_URL: "https://sheets.example", ...more });
  const context = { database: service.owner, config, log: service.app.log, attempt: 1, lastTry: false };
  await sendNotices.run({}, { ...context, signal: new AbortController().signal });
}

const lettersTo = (browser: Browser) =>
  lettersIn(service.mailFolder).filter(
    (letter) => letter.includes(`To: ${browser.person.email}`) && letter.includes("concerns you"),
  );

it("nothing concerns anyone that they may not see", () => {
  for (const kind of recordKinds) for (const role of concerns[kind] ?? []) expect(maySee[kind], kind).toContain(role);
  expect(roles.filter((role) => mayReadEntry([role], "drawn") && (concerns.drawn ?? []).includes(role))).toEqual([]);
});

describe("what concerns someone", () => {
  it("is what others did that waits for their part, newest first, and never what they did", async () => {
    await room.sendJudged([place(1)]);
    await by.engineer.post(`${room.path}/notes`, note("g1")).expect(201);
    expect(await kindsFor(by.architect)).toEqual(["note written", "assessed"]);
    expect(await kindsFor(by.engineer)).toEqual(["assessed", "revision sent"]);
    expect(await kindsFor(by.owner)).toEqual(["revision sent"]);
    expect(await kindsFor(by.reader)).toEqual([]);
    const outsider = await service.signIn("outsider");
    expect(Notices.parse((await outsider.get("/api/notices").expect(200)).body)).toEqual({ notices: [], unseen: 0 });
  });

  it("is unseen until its reader says so, for them alone, and never becomes unseen again", async () => {
    await room.sendJudged([place(1)]);
    const unseen = async (browser: Browser) => {
      const { notices } = Notices.parse((await browser.get("/api/notices").expect(200)).body);
      return notices.filter(({ projectId, seen }) => projectId === room.projectId && !seen).length;
    };
    expect([await unseen(by.engineer), await unseen(by.owner)]).toEqual([2, 1]);
    await by.engineer.post(`${room.path}/notices/seen`, { upTo: 1000 }).expect(204);
    expect([await unseen(by.engineer), await unseen(by.owner)]).toEqual([0, 1]);
    await by.engineer.post(`${room.path}/notices/seen`, { upTo: 1 }).expect(204);
    expect(await unseen(by.engineer)).toBe(0);
    expectProblem(await by.engineer.post(`${room.path}/notices/seen`, { upTo: 0 }), "body-invalid");
    expectProblem(await (await service.signIn("outsider")).post(`${room.path}/notices/seen`, { upTo: 1 }), "not-found");
  });
});

describe("letters", () => {
  it("are not written to anyone who did not ask for them", async () => {
    expect((await by.engineer.get("/api/account/notices").expect(200)).body).toEqual({ letters: "none" });
    await room.sendJudged([place(1)]);
    await turn();
    expect(lettersTo(by.engineer)).toEqual([]);
    expectProblem(await choose(by.engineer, "hourly"), "body-invalid");
  });

  it("tell at once what happens after they were asked for, each thing once, with the signed head of the record and where to read it", async () => {
    await room.sendJudged([place(1)]);
    const before = lettersTo(by.engineer).length;
    await choose(by.engineer, "at once").expect(204);
    await turn();
    expect(lettersTo(by.engineer)).toHaveLength(before); // what was before goes into none
    await by.architect.post(`${room.path}/notes`, note("g1", { text: "a secret of the house" })).expect(201);
    await turn();
    await turn();
    const letters = lettersTo(by.engineer).slice(before);
    expect(letters).toHaveLength(1);
    const [letter = ""] = letters;
    expect(letter).toContain("Subject: Lock Lane: Note written");
    expect(letter).toContain("Note written, by Test architect, architect");
    expect(letter).toContain(`https://sheets.example/projects/${room.projectId}`);
    expect(letter).not.toContain("a secret of the house");
    expect(letter).toContain(cautionLine);
    const head = SignedHead.parse((await by.engineer.get(`${room.path}/record/head`).expect(200)).body);
    expect(letter).toContain(`head ${head.number}:${head.head}`);
    expect(letter).toContain(head.fingerprint);
  });

  it("that do not leave go again, and then once", async () => {
    await choose(by.owner, "at once").expect(204);
    await room.sendJudged([place(1)]);
    const refusing = await mailServer({ refuses: true });
    const before = lettersTo(by.owner).length;
    await turn({ SMTP_URL: refusing.url });
    await refusing.close();
    expect(refusing.letters).toEqual([]);
    const taking = await mailServer();
    await turn({ SMTP_URL: taking.url });
    await turn({ SMTP_URL: taking.url });
    await taking.close();
    expect(taking.letters).toHaveLength(1);
    expect(lettersTo(by.owner)).toHaveLength(before);
  });

  it("once a day gather what all projects have to tell", async () => {
    await choose(by.engineer, "daily").expect(204);
    const other = await openReviewRoom(service, by);
    await room.sendJudged([place(1)]);
    await other.sendJudged([place(2)]);
    const { noticeSetting } = service.owner.connection;
    const before = lettersTo(by.engineer).length;
    await turn();
    const dueNow = isDue({ letters: "daily", letteredAt: null, since: new Date() }, new Date());
    expect(dueNow).toBe(false);
    expect(lettersTo(by.engineer)).toHaveLength(before);
    const twoDaysAgo = new Date(Date.now() - 2 * 86_400_000);
    await noticeSetting.update({
      where: { personId: by.engineer.person.id },
      data: { since: twoDaysAgo, letteredAt: twoDaysAgo },
    });
    await turn();
    await turn();
    const letters = lettersTo(by.engineer).slice(before);
    // Before the hour of a day that of the day before is past as well; the second turn has nothing new.
    expect(letters).toHaveLength(1);
    expect(letters[0]).toMatch(/Subject: \d+ things in \d+ projects/);
    expect(letters[0]).toContain(`/projects/${other.projectId}`);
  });

  it("of a day are due from its hour on, once", () => {
    const at = (text: string) => new Date(`2027-03-10T${text}:00.000Z`);
    const [yesterday, today] = [new Date("2027-03-09T09:00:00.000Z"), at("06:00")];
    const due = (letteredAt: Date | null, now: Date, since = yesterday) =>
      isDue({ letters: "daily", letteredAt, since }, now);
    expect([due(yesterday, at("05:59")), due(yesterday, at("06:00")), due(today, at("23:00"))]).toEqual([
      false,
      true,
      false,
    ]);
    expect([due(null, at("07:00")), due(null, at("07:00"), at("06:30"))]).toEqual([true, false]);
    // One that nobody could send at its hour goes out as soon as somebody can, before the next hour as well.
    expect(due(new Date("2027-03-08T06:00:00.000Z"), at("00:30"))).toBe(true);
    expect(isDue({ letters: "at once", letteredAt: at("06:00"), since: yesterday }, at("06:01"))).toBe(true);
  });
});
