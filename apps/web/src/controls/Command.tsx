import type { ReactNode } from "react";

export interface CommandProps {
  children: ReactNode;
  onPress: () => void;
  /** The one next step of this place. */
  next?: boolean;
  quiet?: boolean;
  engineer?: boolean;
  /** The single key that does it, shown small. */
  shortcut?: string | undefined;
  /** Why it sleeps; drawn dashed, said in its title, still reachable by keyboard. */
  asleepBecause?: string | undefined;
  type?: "button" | "submit";
}

/** A command in words. Asleep, it keeps its place and says why. */
export function Command({ children, onPress, asleepBecause, shortcut, type = "button", ...kind }: CommandProps) {
  const asleep = asleepBecause !== undefined;
  return (
    <button
      type={type}
      className={classOf(kind)}
      aria-disabled={asleep || undefined}
      title={asleepBecause}
      aria-label={asleep && typeof children === "string" ? `${children}. ${asleepBecause}` : undefined}
      onClick={(event) => {
        if (type === "submit" && asleep) event.preventDefault();
        if (!asleep) onPress();
      }}
    >
      {children}
      {shortcut === undefined ? null : <kbd>{shortcut}</kbd>}
    </button>
  );
}

function classOf({ next, quiet, engineer }: { next?: boolean; quiet?: boolean; engineer?: boolean }): string {
  const kinds = [next && "command-next", quiet && "command-quiet", engineer && "command-engineer"];
  return ["command", ...kinds.filter(Boolean)].join(" ");
}
