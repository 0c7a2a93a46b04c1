import { beforeEach, describe, expect, it, vi } from "vitest";

const secret = "k7".repeat(21) + "x";

beforeEach(() => vi.resetModules());

/** The module as a page meets it: opened at an address. */
async function openedAt(address: string) {
  history.replaceState(null, "", address);
  return (await import("../../src/data/link-secret.ts")).linkSecret;
}

describe("a page opened by a one-time link", () => {
  // First, because the modules of earlier tests would listen as well.
  it("takes another one that is put into its address later, and tells whoever shows the link", async () => {
    const linkSecret = await openedAt("/invitation");
    const told = vi.fn<() => void>();
    linkSecret.subscribe(told);
    history.replaceState(null, "", `/invitation#${secret}`);
    dispatchEvent(new Event("hashchange"));
    expect(told).toHaveBeenCalledOnce();
    expect(linkSecret.get()).toBe(secret);
    expect(location.hash).toBe("");
  });

  it.each(["/invitation", "/first", "/new-password"])("takes the secret out of the address of %s", async (page) => {
    const before = history.length;
    const linkSecret = await openedAt(`${page}#${secret}`);
    expect(linkSecret.get()).toBe(secret);
    expect(location.href).toMatch(new RegExp(`${page}$`));
    expect(history.length).toBe(before);
    linkSecret.forget();
    expect(linkSecret.get()).toBeNull();
  });

  it.each([`/projects/x#${secret}`, "/invitation#short", "/invitation"])("leaves %s alone", async (address) => {
    const linkSecret = await openedAt(address);
    expect(linkSecret.get()).toBeNull();
    expect(location.pathname + location.hash).toBe(address);
  });
});
