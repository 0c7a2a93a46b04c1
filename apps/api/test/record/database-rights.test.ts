import postgres from "postgres";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { act, place } from "../support/sample.ts";
import { startService, type TestService } from "../support/service.ts";

let service: TestService;
let asService: postgres.Sql;
let asOwner: postgres.Sql;
let projectId: string;

const kept = [
  ...["record_entry", "record_payload", "draft_act", "revision", "assessment"],
  ...["matter", "matter_step", "kept_file"],
  ...["note", "note_settlement", "change_request", "request_answer", "stamp", "cost_book", "decision"],
];

beforeAll(async () => {
  service = await startService();
  asService = postgres(service.database.serviceUrl, { max: 1, onnotice: () => undefined });
  asOwner = postgres(service.database.ownerUrl, { max: 1, onnotice: () => undefined });
  projectId = await service.openProject();
  const architect = await service.signIn("architect");
  await architect.post(`/api/projects/${projectId}/draft/acts`, act(0, [place(1)])).expect(200);
});
afterAll(async () => {
  await asService.end();
  await asOwner.end();
  await service.close();
});

/** SQLSTATE a statement ends with; "done" when it ends well. */
const sqlState = (sql: postgres.Sql, statement: string): Promise<string> =>
  sql.unsafe(statement).then(
    () => "done",
    (error: unknown) => (error instanceof postgres.PostgresError ? error.code : String(error)),
  );

/** insufficient_privilege, PostgreSQL appendix A. */
const insufficientPrivilege = "42501";

describe.each(kept)("the service's role on %s", (table) => {
  it.each([
    ["UPDATE", `update ${table} set project_id = project_id`],
    ["DELETE", `delete from ${table}`],
    ["TRUNCATE", `truncate ${table} cascade`],
    ["DISABLE TRIGGER", `alter table ${table} disable trigger all`],
    ["DROP TRIGGER", `drop trigger ${table}_kept on ${table}`],
    ["DROP", `drop table ${table} cascade`],
    ["OWNER TO", `alter table ${table} owner to cornerway_service`],
    ["RULE", `create rule away as on insert to ${table} do instead nothing`],
  ])("is refused %s", async (_what, statement) => {
    expect(await sqlState(asService, statement)).toBe(insufficientPrivilege);
  });
});

describe("the service's role", () => {
  it.each([
    ["SET session_replication_role", "set session_replication_role = replica"],
    [
      "CREATE OR REPLACE of the guarding function",
      "create or replace function record_entry_follows() returns trigger language plpgsql as 'begin return new; end'",
    ],
    ["INSERT of an administrator", "insert into person select * from person"],
    ["UPDATE that makes an administrator", "update person set administrator = true"],
    ["UPDATE of a person's address", "update person set email = email"],
    ["DELETE of a person", "delete from person"],
    ["UPDATE of a role", "update membership set role = role"],
    ["UPDATE of whom a link is for", "update one_time_link set email = email"],
    ["DELETE of a link", "delete from one_time_link"],
    ["UPDATE of a project's name", "update project set name = name"],
    ["DELETE of a project", "delete from project"],
  ])("is refused %s", async (_what, statement) => {
    expect(await sqlState(asService, statement)).toBe(insufficientPrivilege);
  });

  it("makes nobody an administrator where there are people already", async () => {
    const [row] = await asService<
      { done: boolean }[]
    >`select become_first_administrator(id) as done from person limit 1`;
    expect(row?.done).toBe(false);
    expect(await asOwner`select 1 from person where administrator`).toEqual([]);
  });

  it("may read and add on every table that is kept", async () => {
    const rows = await asOwner<{ table_name: string; rights: string }[]>`
      select table_name, string_agg(privilege_type, ' ' order by privilege_type) as rights
      from information_schema.role_table_grants where grantee = 'cornerway_service' and table_name in ${asOwner(kept)} group by 1`;
    expect(new Map(rows.map((row) => [row.table_name, row.rights]))).toEqual(
      new Map(kept.map((table) => [table, "INSERT SELECT"])),
    );
  });

  it.each([
    ["a number is left out", 100],
    ["a number is there already", 1],
  ])("is refused an entry when %s", async (_what, number) => {
    const insert = `insert into record_entry select project_id, ${number}, at, actor_id, actor_role, kind, payload_digest, leaf, head
      from record_entry where project_id = '${projectId}' and number = 1`;
    expect(await sqlState(asService, insert)).toBe("CW002");
  });
});

describe("the owner of the tables", () => {
  it.each(kept)("is stopped by the triggers on %s as well", async (table) => {
    expect(await sqlState(asOwner, `truncate ${table} cascade`)).toBe("CW001");
  });

  it("cannot update or delete an entry either while the triggers are on", async () => {
    expect(await sqlState(asOwner, "update record_entry set kind = kind")).toBe("CW001");
    expect(await sqlState(asOwner, "delete from record_payload")).toBe("CW001");
    expect(await sqlState(asOwner, "update draft_act set number = number")).toBe("CW001");
  });
});
