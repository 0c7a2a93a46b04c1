import type { ToolName, TrayProps } from "./contract.ts";
import { toolNames } from "./contract.ts";
import { ToolDrawing } from "./ToolDrawing.tsx";
import "./tray.css";

/** Six tools, no more; each is a drawing of what it does. Asleep, it keeps its place and says why. */
export function Tray({ inHand, onTake, asleepBecause }: TrayProps) {
  const asleep = asleepBecause !== undefined;
  return (
    <div className="tray" role="toolbar" aria-label="Tools" aria-orientation="vertical">
      {toolNames.map((tool) => (
        <button
          type="button"
          key={tool}
          className="tool"
          aria-pressed={inHand === tool}
          aria-disabled={asleep || undefined}
          aria-keyshortcuts={tools[tool].key}
          aria-label={asleep ? `${tools[tool].name}. ${asleepBecause}` : tools[tool].name}
          title={asleep ? asleepBecause : tools[tool].does}
          onClick={() => {
            if (!asleep) onTake(inHand === tool ? null : tool);
          }}
        >
          <ToolDrawing tool={tool} />
          <span>{tools[tool].name}</span>
          <kbd>{tools[tool].key}</kbd>
        </button>
      ))}
    </div>
  );
}

const tools: Readonly<Record<ToolName, { name: string; key: string; does: string }>> = {
  stack: { name: "Stack", key: "S", does: "Set a container down, on the ground or on others" },
  shift: { name: "Shift", key: "H", does: "Move what is touched; it takes hold at fittings" },
  turn: { name: "Turn", key: "T", does: "Turn a container by a quarter" },
  cut: { name: "Cut", key: "C", does: "Draw an opening in a wall" },
  "open-wall": { name: "Open wall", key: "W", does: "Take a wall out between its rails and posts" },
  post: { name: "Post", key: "P", does: "Set a post on a pad of its own" },
};
