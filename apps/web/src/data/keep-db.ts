import { createStore, del, get, keys, set, type UseStore } from "idb-keyval";

let opened: UseStore | null = null;
const store = (): UseStore => (opened ??= createStore("cornerway", "kept"));

/** What this browser keeps beyond the life of a page, by key. Values are read back as unknown: an older page wrote them. */
export const keepDb = {
  get: (key: string): Promise<unknown> => get<unknown>(key, store()),
  put: (key: string, value: unknown): Promise<void> => set(key, value, store()),
  remove: (key: string): Promise<void> => del(key, store()),

  async keys(prefix: string): Promise<string[]> {
    const all = await keys<string>(store());
    return all.filter((key) => key.startsWith(prefix));
  },

  async all(prefix: string): Promise<unknown[]> {
    return Promise.all((await keepDb.keys(prefix)).map((key) => keepDb.get(key)));
  },

  async removeAll(prefix: string): Promise<void> {
    await Promise.all((await keepDb.keys(prefix)).map((key) => keepDb.remove(key)));
  },

  /** Takes `from` away and writes `to` in one transaction: at no time is it in both or in neither. */
  move: (from: string, to: string, join: (standing: unknown) => unknown): Promise<void> =>
    store()(
      "readwrite",
      (objects) =>
        new Promise<void>((done, failed) => {
          const standing = objects.get(to);
          standing.addEventListener("success", () => {
            objects.put(join(standing.result), to);
            objects.delete(from);
          });
          objects.transaction.addEventListener("complete", () => done());
          objects.transaction.addEventListener("abort", () => failed(objects.transaction.error));
        }),
    ),
};
