import type { ToolName } from "./contract.ts";

/** What a tool does, as a small drawing, 34 × 26. */
export function ToolDrawing({ tool }: { tool: ToolName }) {
  return (
    <svg
      width="34"
      height="26"
      viewBox="0 0 34 26"
      fill="none"
      stroke="currentColor"
      strokeLinecap="round"
      aria-hidden="true"
    >
      {drawings[tool]}
    </svg>
  );
}

const drawings: Readonly<Record<ToolName, React.ReactNode>> = {
  stack: (
    <>
      <path d="M4 16.5h26v8H4zM4 8.5h26v8H4z" strokeWidth="1.1" />
      <path d="M17 1v5.4M13.8 3.4 17 7l3.2-3.6" />
    </>
  ),
  shift: (
    <>
      <path d="M2.5 15.5h24v8h-24zM9.5 7.5h23v8h-23z" strokeWidth="1.1" />
      <path d="M1 11.5h6M4.6 8.6 7.6 11.5l-3 2.9" />
    </>
  ),
  turn: (
    <>
      <path d="M3 11h28v7H3z" strokeWidth="1.1" />
      <path d="M13 3h8v22h-8z" strokeWidth="1.1" fill="var(--paper)" />
      <path d="M24 2.5a11 11 0 0 1 6.4 5M31 3.4l-.5 4.4-4.2-1.2" />
    </>
  ),
  cut: (
    <>
      <path d="M2 2.5h30v21H2z" strokeWidth="1.1" />
      <path d="M6.5 3.5v19M10.5 3.5v19M24 3.5v19M28 3.5v19" strokeWidth="0.5" />
      <path d="M12.5 7.5h9v11h-9z" strokeWidth="1.3" fill="var(--slip)" />
    </>
  ),
  "open-wall": (
    <>
      <path d="M2 3v20M32 3v20M2 3h8M24 3h8" strokeWidth="1.6" />
      <path d="M10 3h14M2 23h30" strokeWidth="0.9" strokeDasharray="3 3" />
    </>
  ),
  post: (
    <>
      <path d="M5 3h24" strokeWidth="1.2" />
      <path d="M14.3 4h5.4v18.5h-5.4z" strokeWidth="1.2" />
      <path d="M9 24h16" strokeWidth="2" />
    </>
  ),
};
