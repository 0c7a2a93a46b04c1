import type { NewNote, NewQuestion, Operation, Role, Scheme } from "@cornerway/schema";
import { operationsBetween } from "@cornerway/schema";
import { assessScheme } from "../assessment/assess-scheme.ts";
import type { Outcome } from "../outcome.ts";
import { answerRequest } from "../services/answer-request.ts";
import { draw } from "../services/draw.ts";
import { makeRequest } from "../services/make-request.ts";
import { openProject } from "../services/open-project.ts";
import type { Part } from "../services/part.ts";
import { answerQuestion } from "../services/questions/answer-question.ts";
import { askQuestion } from "../services/questions/ask-question.ts";
import { pressStamp } from "../services/press-stamp.ts";
import { readDraft } from "../services/read-draft.ts";
import { recordAssessment } from "../services/record-assessment.ts";
import { sendRevision } from "../services/send-revision.ts";
import { settleNote } from "../services/settle-note.ts";
import { writeNote } from "../services/write-note.ts";
import type { Database } from "../store/database.ts";
import { readRevision } from "../store/revision-rows.ts";
import { demoPeople } from "./demo-people.ts";

export interface DemoProject {
  id: string;
  name: string;
  place: string;
  client: string;
}

/**
 * The demo people at work in one project: each act goes through the service that a request would go through, so that
 * nothing stands in the record that could not have happened. Ids are counted, so that every demo is the same.
 */
export class DemoOffice {
  readonly #database: Database;
  readonly #project: DemoProject;
  #made = 0;

  constructor(database: Database, project: DemoProject) {
    this.#database = database;
    this.#project = project;
  }

  async open(): Promise<void> {
    const members = demoPeople.map(({ role, id, name, email }) => ({ role, person: { id, name, email } }));
    must(await openProject(this.#database, this.#project, members));
  }

  /** The architect draws what leads from the draft to a scheme, in one act. */
  async drawTo(scheme: Scheme): Promise<void> {
    const { number, scheme: before } = await readDraft(this.#database.connection, this.#project.id);
    const act = { id: this.#id(), base: number, operations: operationsBetween(before, scheme) };
    must(await draw(this.#database, this.#part("architect"), act));
  }

  /** The architect sends the draft; a worker assesses it from the queue, unless it is assessed here first. */
  async send(remark: string): Promise<void> {
    const { number, contentDigest } = await readDraft(this.#database.connection, this.#project.id);
    const body = { id: this.#id(), draftNumber: number, contentDigest, remark };
    must(await sendRevision(this.#database, this.#part("architect"), body));
  }

  /** The service assesses a revision at once, so that what follows can rest on its answer. */
  async assess(letter: string): Promise<void> {
    const revision = await readRevision(this.#database.connection, this.#project.id, letter);
    if (revision === null) throw new Error(`the demo: no revision ${letter}`);
    const { scheme, contentDigest } = revision;
    const run = { projectId: this.#project.id, letter, attempt: 1, contentDigest };
    must(await recordAssessment(this.#database, run, { ok: true, ...assessScheme(scheme, contentDigest) }));
  }

  /** Returns the id of the note. */
  async write(role: Role, note: Pick<NewNote, "elementId" | "revision" | "text"> & Partial<NewNote>): Promise<string> {
    const id = this.#id();
    must(await writeNote(this.#database, this.#part(role), { markId: null, answers: null, ...note, id }));
    return id;
  }

  /** Someone asks the engineer. Returns the id of the question. */
  async question(role: Role, asked: Omit<NewQuestion, "id">): Promise<string> {
    const id = this.#id();
    must(await askQuestion(this.#database, this.#part(role), { ...asked, id }));
    return id;
  }

  /** The engineer answers on an assessed revision, with one condition that the architect owes. */
  async answer(questionId: string, revision: string, { text, condition }: { text: string; condition: string }) {
    const { contentDigest, resultDigest } = await this.#revision(revision);
    if (resultDigest === null) throw new Error(`revision ${revision} of the demo is not assessed`);
    const conditions = [{ id: this.#id(), text: condition, owedBy: "architect" as const }];
    const answer = { kind: "with conditions" as const, text, conditions };
    const body = { id: this.#id(), revision, contentDigest, resultDigest, answer };
    must(await answerQuestion(this.#database, this.#part("engineer"), questionId, body));
  }

  async settle(role: Role, noteId: string): Promise<void> {
    must(await settleNote(this.#database, this.#part(role), noteId));
  }

  /** The engineer asks for a change on a revision. Returns the id of the request. */
  async ask(revision: string, text: string, operations: Operation[]): Promise<string> {
    const id = this.#id();
    const { contentDigest } = await this.#revision(revision);
    must(await makeRequest(this.#database, this.#part("engineer"), { id, revision, contentDigest, text, operations }));
    return id;
  }

  async takeIn(requestId: string): Promise<void> {
    const { number: base } = await readDraft(this.#database.connection, this.#project.id);
    const body = { answer: "take in" as const, actId: this.#id(), base };
    must(await answerRequest(this.#database, this.#part("architect"), requestId, body));
  }

  async decline(requestId: string, reason: string): Promise<void> {
    const body = { answer: "decline" as const, reason };
    must(await answerRequest(this.#database, this.#part("architect"), requestId, body));
  }

  async stamp(revision: string, text: string): Promise<void> {
    const { contentDigest, resultDigest } = await this.#revision(revision);
    if (resultDigest === null) throw new Error(`revision ${revision} of the demo is not assessed`);
    const body = { id: this.#id(), revision, disposition: "Revise and resubmit" as const, text };
    must(await pressStamp(this.#database, this.#part("engineer"), { ...body, contentDigest, resultDigest }));
  }

  async #revision(letter: string) {
    const revision = await readRevision(this.#database.connection, this.#project.id, letter);
    if (revision === null) throw new Error(`the demo has no revision ${letter}`);
    return revision;
  }

  #part(role: Role): Part {
    const person = demoPeople.find((one) => one.role === role);
    if (person === undefined) throw new Error(`the demo has no ${role}`);
    const { id, name, email } = person;
    return { projectId: this.#project.id, person: { id, name, email }, roles: [role] };
  }

  /** The project's id with its last figures counted on: 5e1f0a10-0000-4000-8000-000000000100 gives …101, …102. */
  #id(): string {
    this.#made += 1;
    const tail = Number.parseInt(this.#project.id.slice(-12), 16) + this.#made;
    return this.#project.id.slice(0, -12) + tail.toString(16).padStart(12, "0");
  }
}

function must<T>(outcome: Outcome<T>): T {
  if (!outcome.ok)
    throw new Error(`the demo could not be made: ${outcome.refusal.code} ${outcome.refusal.detail ?? ""}`);
  return outcome.value;
}
