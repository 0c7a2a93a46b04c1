import { Question } from "@cornerway/schema";
import type { Connection } from "../../store/connection.ts";
import { findMatter } from "../../store/matter-rows.ts";

export const findQuestion = (db: Connection, projectId: string, id: string) =>
  findMatter(db, projectId, { kind: "question", id }, Question);
