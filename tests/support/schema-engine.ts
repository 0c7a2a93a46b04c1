import { readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { PrismaPg } from "@prisma/adapter-pg";
import {
  bindMigrationAwareSqlAdapterFactory,
  type SqlDriverAdapter,
  type SqlMigrationAwareDriverAdapterFactory,
  type SqlQuery,
} from "@prisma/driver-adapter-utils";
import type { MigrationList, SchemaEngine } from "@prisma/schema-engine-wasm";
import pg from "pg";

/**
 * The official schema engine, as WebAssembly and without a network: an opinion from outside on whether schema.prisma and
 * the migrations are in step. It does not see triggers, functions, checks and grants.
 */
export async function openSchemaEngine(ownerUrl: string, schemaFile: string): Promise<SchemaEngine> {
  const glue = await loadOnce();
  const datamodels = [[schemaFile, readFileSync(schemaFile, "utf8")]];
  const factory = bindMigrationAwareSqlAdapterFactory(adapterFactory(ownerUrl));
  return glue.SchemaEngine.new({ datamodels }, () => undefined, factory);
}

/** The folder of migrations as the engine takes it. */
export function migrationList(folder: string, names: readonly string[]): MigrationList {
  const file = (name: string) => ({
    path: "migration.sql",
    content: { tag: "ok" as const, value: readFileSync(path.join(folder, name, "migration.sql"), "utf8") },
  });
  const lock = path.join(folder, "migration_lock.toml");
  return {
    baseDir: folder,
    lockfile: { path: "migration_lock.toml", content: readFileSync(lock, "utf8") },
    shadowDbInitScript: "",
    migrationDirectories: names.map((name) => ({ path: name, migrationFile: file(name) })),
  };
}

interface Glue {
  SchemaEngine: { readonly new: (options: object, log: () => void, adapter: object) => Promise<SchemaEngine> };
  __wbg_set_wasm(exports: WebAssembly.Exports): void;
}

const glueName = "@prisma/schema-engine-wasm/schema_engine_bg";
let loaded: Promise<Glue> | undefined;
const loadOnce = () => (loaded ??= load()); // the module may be started once in a process

async function load(): Promise<Glue> {
  const panics = { set_message: (message: string) => process.stderr.write(`schema engine: ${message}\n`) };
  Object.assign(globalThis, { PRISMA_WASM_PANIC_REGISTRY: panics });
  const glue = (await import(glueName)) as Glue;
  const folder = path.dirname(createRequire(import.meta.url).resolve(glueName));
  const bytes = await readFile(path.join(folder, "schema_engine_bg.wasm"));
  const { instance } = await WebAssembly.instantiate(bytes, { "./schema_engine_bg.js": glue as never });
  glue.__wbg_set_wasm(instance.exports);
  (instance.exports["__wbindgen_start"] as () => void)();
  return glue;
}

/** Address in parts: where it is given whole, the adapter's shadow database would be the real one. */
function partsOf(url: string) {
  const { hostname: host, port, username, password, pathname } = new URL(url);
  const [user, secret] = [decodeURIComponent(username), decodeURIComponent(password)];
  return { host, port: Number(port || 5432), user, password: secret, database: pathname.slice(1) };
}

function adapterFactory(url: string): SqlMigrationAwareDriverAdapterFactory {
  const factory = new PrismaPg(partsOf(url));
  const { provider, adapterName } = factory;
  return {
    ...{ provider, adapterName },
    connect: async () => mended(await factory.connect()),
    connectToShadowDb: () => shadowDatabase(url),
  };
}

/** A database of its own for the engine to play the migrations in, taken away once its connections are closed. */
async function shadowDatabase(url: string): Promise<SqlDriverAdapter> {
  const name = `shadow_${crypto.randomUUID().replaceAll("-", "")}`;
  const admin = new pg.Client({ connectionString: url });
  await admin.connect();
  await admin.query(`create database ${name}`);
  const adapter = mended(await new PrismaPg({ ...partsOf(url), database: name }).connect());
  const close = adapter.dispose.bind(adapter);
  adapter.dispose = async () => {
    await close();
    await admin.query(`drop database ${name} with (force)`);
    await admin.end();
  };
  return adapter;
}

interface Io {
  fields: { dataTypeID: number }[];
}

/** What the adapter keeps to itself. */
interface Inside {
  client: { query(text: string): Promise<unknown> };
  performIO(query: SqlQuery): Promise<Io>;
}

const [charOid, textOid] = [18, 25]; // pg_type: "char", text
const characterColumn = 6; // ColumnTypeEnum.Character of the adapter's interface

/** Mends two faults of the adapter: scripts are cut at every semicolon, and the type "char" is unknown to it. */
function mended(adapter: SqlDriverAdapter): SqlDriverAdapter {
  const inside = adapter as unknown as Inside;
  const [performIO, queryRaw] = [inside.performIO.bind(adapter), adapter.queryRaw.bind(adapter)];
  adapter.executeScript = async (script) => void (await inside.client.query(script));
  adapter.queryRaw = async (query) => {
    const chars: number[] = [];
    inside.performIO = async (asked) => {
      const answer = await performIO(asked);
      for (const [at, field] of answer.fields.entries()) {
        if (field.dataTypeID !== charOid) continue;
        field.dataTypeID = textOid;
        chars.push(at);
      }
      return answer;
    };
    const result = await queryRaw(query);
    for (const at of chars) result.columnTypes[at] = characterColumn;
    return result;
  };
  return adapter;
}
