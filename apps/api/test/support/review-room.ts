import { randomUUID } from "node:crypto";
import { Draft, Revision, type Operation, type Role } from "@cornerway/schema";
import { vi } from "vitest";
import { act } from "./sample.ts";
import type { Browser, TestService } from "./service.ts";

/** A project with everyone at work in it, and what they do again and again. */
export class ReviewRoom {
  readonly path: string;
  readonly by: Record<Role, Browser>;

  constructor(path: string, by: ReviewRoom["by"]) {
    this.path = path;
    this.by = by;
  }

  /** The architect draws, sends the draft, and the service assesses it. */
  async send(...operations: Operation[]): Promise<Revision> {
    const { number: base } = await this.#draft();
    await this.by.architect.post(`${this.path}/draft/acts`, act(base, operations)).expect(200);
    return this.assessed(await this.sendDraft());
  }

  /** Sends the draft as it is, and gives its letter without waiting for the assessment. */
  async sendDraft(): Promise<string> {
    const { number: draftNumber, contentDigest } = await this.#draft();
    const body = { id: randomUUID(), draftNumber, contentDigest, remark: null };
    return String((await this.by.architect.post(`${this.path}/revisions`, body).expect(202)).body.letter);
  }

  async assessed(letter: string): Promise<Revision> {
    const read = async () =>
      Revision.parse((await this.by.engineer.get(`${this.path}/revisions/${letter}`).expect(200)).body);
    return vi.waitFor(
      async () => {
        const revision = await read();
        if (revision.assessment !== "done") throw new Error(`the assessment of ${letter} is ${revision.assessment}`);
        return revision;
      },
      { timeout: 30_000, interval: 50 },
    );
  }

  async #draft(): Promise<Draft> {
    return Draft.parse((await this.by.architect.get(`${this.path}/draft`).expect(200)).body);
  }
}

export async function openReviewRoom(service: TestService, by: ReviewRoom["by"]): Promise<ReviewRoom> {
  return new ReviewRoom(`/api/projects/${await service.openProject()}`, by);
}

export const signInAll = async (service: TestService): Promise<ReviewRoom["by"]> => ({
  architect: await service.signIn("architect"),
  engineer: await service.signIn("engineer"),
  checker: await service.signIn("checker"),
  owner: await service.signIn("owner"),
  reader: await service.signIn("reader"),
});

/** What a judgement is bound to, from the revision on the screen. */
export const boundTo = ({ letter: revision, contentDigest, resultDigest }: Revision) => ({
  ...{ revision, contentDigest, resultDigest: resultDigest ?? "" },
});
