import { chmodSync, mkdirSync, mkdtempSync, realpathSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { chooseDataFolder } from "../../apps/api/start/data-folder.mjs";

let home: string;
let clone: string;

beforeEach(() => {
  home = realpathSync(mkdtempSync(path.join(os.tmpdir(), "cornerway-home-")));
  clone = path.join(home, "clone");
  mkdirSync(clone);
  for (const folder of [home, clone]) chmodSync(folder, 0o755);
});

afterEach(() => rmSync(home, { recursive: true }));

it("data lies in .data of the clone", () => {
  expect(chooseDataFolder(clone, {})).toEqual({ folder: path.join(clone, ".data"), why: undefined });
});

it("CORNERWAY_DATA chooses another place", () => {
  expect(chooseDataFolder(clone, { CORNERWAY_DATA: "/srv/cornerway" }).folder).toBe("/srv/cornerway");
});

it("for root in a home closed to others, data goes to a place that stays the same, is no temporary folder and is explained", ({
  skip,
}) => {
  skip(process.getuid?.() !== 0, "only root hands PostgreSQL to another account");
  chmodSync(home, 0o700);
  const { folder, why } = chooseDataFolder(clone, {});
  expect(folder).toMatch(/^\/var\/lib\/cornerway-[0-9a-f]{12}$/);
  expect(chooseDataFolder(clone, {}).folder).toBe(folder);
  expect(chooseDataFolder(home, {}).folder).not.toBe(folder);
  expect(why).toContain("cannot enter this clone");
});
