import { randomUUID } from "node:crypto";
import { assess } from "@cornerway/engine";
import { Draft, Revision, resultDigest, type Assessment, type Operation, type Role } from "@cornerway/schema";
import { assessScheme, type SchemeAssessed } from "../../src/assessment/assess-scheme.ts";
import { recordAssessment } from "../../src/services/record-assessment.ts";
import { act } from "./sample.ts";
import { startService, type Browser, type TestService } from "./service.ts";

/** The service without a worker: the room writes the answer to each revision itself, by the load path alone unless told otherwise. */
export const startReviewService = (): Promise<TestService> => startService({ WORKER: "apart" });

/** A project with everyone at work in it, and what they do again and again. */
export class ReviewRoom {
  readonly service: TestService;
  readonly projectId: string;
  readonly by: Record<Role, Browser>;

  constructor(service: TestService, projectId: string, by: ReviewRoom["by"]) {
    this.service = service;
    this.projectId = projectId;
    this.by = by;
  }

  get path(): string {
    return `/api/projects/${this.projectId}`;
  }

  /** The architect draws and sends the draft; it is assessed, with the answer altered where a test needs another. */
  async send(
    operations: Operation[],
    alter: (answer: Assessment) => Assessment = (answer) => answer,
  ): Promise<Revision> {
    return this.#sendAssessed(operations, ({ scheme, contentDigest }) => {
      const assessment = alter(assess(scheme));
      return { assessment, resultDigest: resultDigest(contentDigest, assessment), proof: null };
    });
  }

  /** The architect draws and sends the draft; it is assessed with its strength, as a worker does it. */
  async sendJudged(operations: Operation[]): Promise<Revision> {
    return this.#sendAssessed(operations, ({ scheme, contentDigest }) => assessScheme(scheme, contentDigest));
  }

  async #sendAssessed(operations: Operation[], assessed: (sent: Revision) => SchemeAssessed): Promise<Revision> {
    await this.draw(operations);
    const letter = await this.sendDraft();
    const sent = await this.read(letter);
    const run = { projectId: this.projectId, letter, attempt: 1, contentDigest: sent.contentDigest };
    await recordAssessment(this.service.owner, run, { ok: true, ...assessed(sent) });
    return this.read(letter);
  }

  async draw(operations: Operation[]): Promise<void> {
    const { number: base } = await this.#draft();
    await this.by.architect.post(`${this.path}/draft/acts`, act(base, operations)).expect(200);
  }

  /** Sends the draft as it is, and gives its letter; nobody assesses it. */
  async sendDraft(): Promise<string> {
    const { number: draftNumber, contentDigest } = await this.#draft();
    const body = { id: randomUUID(), draftNumber, contentDigest, remark: null };
    return String((await this.by.architect.post(`${this.path}/revisions`, body).expect(202)).body.letter);
  }

  async read(letter: string): Promise<Revision> {
    return Revision.parse((await this.by.engineer.get(`${this.path}/revisions/${letter}`).expect(200)).body);
  }

  async #draft(): Promise<Draft> {
    return Draft.parse((await this.by.architect.get(`${this.path}/draft`).expect(200)).body);
  }
}

export const openReviewRoom = async (service: TestService, by: ReviewRoom["by"]): Promise<ReviewRoom> =>
  new ReviewRoom(service, await service.openProject(), by);

export const signInAll = async (service: TestService): Promise<ReviewRoom["by"]> => ({
  architect: await service.signIn("architect"),
  engineer: await service.signIn("engineer"),
  checker: await service.signIn("checker"),
  owner: await service.signIn("owner"),
  reader: await service.signIn("reader"),
});

/** What a judgement is bound to, from the revision on the screen. */
export const boundTo = ({ letter: revision, contentDigest, resultDigest: result }: Revision) => ({
  ...{ revision, contentDigest, resultDigest: result ?? "" },
});
