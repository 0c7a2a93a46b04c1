import { linkPages } from "@cornerway/schema";

const pages: readonly string[] = Object.values(linkPages);
const listeners = new Set<() => void>();
let secret: string | null = null;

/** Takes the secret of a one-time link out of the address, so that neither history nor anyone who looks on has it. */
function take(): void {
  const found = /^#([\w-]{43})$/.exec(location.hash)?.[1];
  if (found === undefined || !pages.includes(location.pathname)) return;
  history.replaceState(history.state, "", location.pathname);
  secret = found;
  for (const tell of listeners) tell();
}

take();
addEventListener("hashchange", take);

/** The secret this page was opened with; kept in memory until it has been exchanged. */
export const linkSecret = {
  get: (): string | null => secret,
  forget: (): void => {
    secret = null;
  },
  subscribe: (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
};
