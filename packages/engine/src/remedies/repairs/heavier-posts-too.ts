import type { Operation, Post } from "@cornerway/schema";
import { findSection } from "../../catalog/sections/find-section.ts";
import type { Trial } from "../trial.ts";
import { postSections } from "../usual-steel.ts";
import type { Repair } from "./repair.ts";

/** Posts of the change that are beyond their strength, all made of the lightest usual tube stiffer by as much. */
export const heavierPostsToo: Repair = (trial, { parts }) => {
  const posts = trial.operations.flatMap((operation) => (operation.kind === "post.set" ? [operation.post] : []));
  const over = parts.filter(({ element }) => element === "added post");
  const [first] = posts;
  if (first === undefined || over.length === 0) return undefined;
  const section = stifferBy(first.section, Math.max(...over.map(({ use }) => use)));
  return section === undefined ? undefined : withSection(trial, section);
};

/** Undefined where none is: bowing and bending both fall with the second moment. */
function stifferBy(name: string, times: number): string | undefined {
  const now = stiffness(name);
  return postSections.find((section) => stiffness(section) > now && stiffness(section) >= now * times);
}

function stiffness(name: string): number {
  const section = findSection(name);
  return section?.kind === "tube" ? Math.min(section.ixMm4, section.iyMm4) : 0;
}

function withSection(trial: Trial, section: string): Trial {
  const heavier = (post: Post): Post => ({ ...post, section });
  const operations = trial.operations.map((operation): Operation =>
    operation.kind === "post.set" ? { ...operation, post: heavier(operation.post) } : operation,
  );
  const { change, also } = trial;
  return {
    change: change.kind === "posts" ? { ...change, section } : change,
    operations,
    ...(also && { also: also.map((one) => (one.kind === "posts" ? { ...one, section } : one)) }),
  };
}
