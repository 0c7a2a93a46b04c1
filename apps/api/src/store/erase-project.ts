import { ProjectId } from "@cornerway/schema";
import type { Connection } from "./connection.ts";

const tables = [
  ...["option_withdrawal", "option_pick", "option_answer", "kept_option", "option_set"],
  ...["decision", "cost_book", "permit_set"],
  ...["matter_step", "matter", "kept_file"],
  ...["assessment_working", "assessment_report"],
  ...["record_payload", "record_entry", "stamp", "request_answer", "change_request", "note_settlement", "note"],
  ...[
    "assessment",
    "assessment_run",
    "revision",
    "draft_act",
    "draft",
    "membership",
    "notice_mark",
    "one_time_link",
    "webhook",
  ],
];

/**
 * Takes a project away with its record. Only the owner of the tables can: the record's triggers are off for the length
 * of one transaction. For the demo project, which anyone may start again; no route leads here. Sockets open on it are closed at every process.
 */
export async function eraseProject(ownerConnection: Connection, projectId: string): Promise<void> {
  // A block of statements takes no parameters, so the id is held to its form before it becomes part of the text.
  const id = ProjectId.parse(projectId);
  const deletions = tables.map((table) => `delete from "${table}" where "project_id" = '${id}'::uuid;`);
  const switched = (how: "disable" | "enable") => tables.map((table) => `alter table "${table}" ${how} trigger user;`);
  const project = `delete from "project" where "id" = '${id}'::uuid;`;
  const told = `perform pg_notify('cornerway_record', '${JSON.stringify({ project: id, number: 0 })}');`;
  const steps = [...switched("disable"), ...deletions, project, ...switched("enable"), told];
  await ownerConnection.$executeRawUnsafe(`do $erase$ begin ${steps.join(" ")} end $erase$`);
}
