import postgres from "postgres";
import { afterAll, beforeAll, expect, it } from "vitest";
import { freshDatabase, type FreshDatabase } from "../../../../tests/support/fresh-database.ts";
import { Prisma } from "../../src/generated/prisma/client.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";

let database: FreshDatabase;
let service: Database;
let sql: postgres.Sql;

beforeAll(async () => {
  database = await freshDatabase();
  service = openDatabase(database.serviceUrl);
  sql = postgres(database.ownerUrl, { max: 1 });
});
afterAll(async () => {
  await sql.end();
  await service.close();
  await database.drop();
});

const tableOf = (model: string) => model.replace(/(?<!^)[A-Z]/g, (capital) => `_${capital}`).toLowerCase();
const columnOf = (field: string) => field.replace(/[A-Z]/g, (capital) => `_${capital}`).toLowerCase();

/** Fields of each model, as the generated client lists them. */
const fields: Record<string, Record<string, string>> = {
  Person: Prisma.PersonScalarFieldEnum,
  Session: Prisma.SessionScalarFieldEnum,
  Project: Prisma.ProjectScalarFieldEnum,
  CostBook: Prisma.CostBookScalarFieldEnum,
  Decision: Prisma.DecisionScalarFieldEnum,
  Membership: Prisma.MembershipScalarFieldEnum,
  Draft: Prisma.DraftScalarFieldEnum,
  DraftAct: Prisma.DraftActScalarFieldEnum,
  Revision: Prisma.RevisionScalarFieldEnum,
  Assessment: Prisma.AssessmentScalarFieldEnum,
  Note: Prisma.NoteScalarFieldEnum,
  NoteSettlement: Prisma.NoteSettlementScalarFieldEnum,
  ChangeRequest: Prisma.ChangeRequestScalarFieldEnum,
  RequestAnswer: Prisma.RequestAnswerScalarFieldEnum,
  Stamp: Prisma.StampScalarFieldEnum,
  PermitSet: Prisma.PermitSetScalarFieldEnum,
  Matter: Prisma.MatterScalarFieldEnum,
  MatterStep: Prisma.MatterStepScalarFieldEnum,
  KeptFile: Prisma.KeptFileScalarFieldEnum,
  RecordEntry: Prisma.RecordEntryScalarFieldEnum,
  RecordKey: Prisma.RecordKeyScalarFieldEnum,
  RecordPayload: Prisma.RecordPayloadScalarFieldEnum,
  RateWindow: Prisma.RateWindowScalarFieldEnum,
  OneTimeLink: Prisma.OneTimeLinkScalarFieldEnum,
  AccessToken: Prisma.AccessTokenScalarFieldEnum,
  RepeatableAnswer: Prisma.RepeatableAnswerScalarFieldEnum,
  Webhook: Prisma.WebhookScalarFieldEnum,
  WebhookDelivery: Prisma.WebhookDeliveryScalarFieldEnum,
  AssessmentRun: Prisma.AssessmentRunScalarFieldEnum,
  AssessmentReport: Prisma.AssessmentReportScalarFieldEnum,
  AssessmentWorking: Prisma.AssessmentWorkingScalarFieldEnum,
  Worker: Prisma.WorkerScalarFieldEnum,
  NoticeMark: Prisma.NoticeMarkScalarFieldEnum,
  NoticeSetting: Prisma.NoticeSettingScalarFieldEnum,
  OptionSet: Prisma.OptionSetScalarFieldEnum,
  KeptOption: Prisma.KeptOptionScalarFieldEnum,
  OptionAnswer: Prisma.OptionAnswerScalarFieldEnum,
  OptionPick: Prisma.OptionPickScalarFieldEnum,
  OptionWithdrawal: Prisma.OptionWithdrawalScalarFieldEnum,
};

it("the models are those of the schema, each a table of the migrations, and there is no other table but the migrations' own", async () => {
  expect(Object.keys(fields).sort()).toEqual(Object.keys(Prisma.ModelName).sort());
  const tables = await sql<{ name: string }[]>`select tablename as name from pg_tables where schemaname = 'public'`;
  const expected = [...Object.keys(fields).map(tableOf), "_prisma_migrations"].sort();
  expect(tables.map(({ name }) => name).sort()).toEqual(expected);
});

it.each(Object.keys(fields))("%s has the columns that the migrations make, no more and no fewer", async (model) => {
  const columns = await sql<{ name: string }[]>`
    select column_name as name from information_schema.columns where table_schema = 'public' and table_name = ${tableOf(model)}`;
  expect(columns.map(({ name }) => name).sort()).toEqual(
    Object.values(fields[model] ?? {})
      .map(columnOf)
      .sort(),
  );
});

it("every table can be read through its model by the service's role", async () => {
  const { connection: db } = service;
  const counts = await Promise.all([
    db.person.count(),
    db.session.count(),
    db.project.count(),
    db.membership.count(),
    db.draft.count(),
    db.draftAct.count(),
    db.revision.count(),
    db.assessment.count(),
    db.note.count(),
    db.noteSettlement.count(),
    db.changeRequest.count(),
    db.requestAnswer.count(),
    db.stamp.count(),
    db.recordEntry.count(),
    db.recordKey.count(),
    db.recordPayload.count(),
    db.rateWindow.count(),
    db.oneTimeLink.count(),
    db.accessToken.count(),
    db.repeatableAnswer.count(),
    db.webhook.count(),
    db.matter.count(),
    db.matterStep.count(),
    db.keptFile.count(),
    db.costBook.count(),
    db.decision.count(),
    db.webhookDelivery.count(),
    db.assessmentRun.count(),
    db.assessmentReport.count(),
    db.assessmentWorking.count(),
    db.worker.count(),
    db.permitSet.count(),
    db.optionSet.count(),
    db.keptOption.count(),
    db.optionAnswer.count(),
    db.optionPick.count(),
    db.optionWithdrawal.count(),
    db.noticeSetting.count(),
    db.noticeMark.count(),
  ]);
  expect(counts).toEqual(Object.keys(fields).map(() => 0));
});
