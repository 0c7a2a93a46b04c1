import type { Operation, Scheme } from "@cornerway/schema";
import { useRef, useState } from "react";
import { Command } from "../../controls/Command.tsx";
import type { FileFault } from "./read-file.ts";
import "./scheme-file.css";

export interface BringInProps {
  scheme: Scheme;
  onDraw: (operations: Operation[]) => boolean;
  asleepBecause: string | undefined;
}

/** Brings a scheme file in: one move, drawn like any other, so it is taken back like any other. */
export function BringIn({ scheme, onDraw, asleepBecause }: BringInProps) {
  const input = useRef<HTMLInputElement>(null);
  const [faults, setFaults] = useState<readonly FileFault[]>([]);
  const [done, setDone] = useState<string | null>(null);

  const bring = async (file: File): Promise<void> => {
    setDone(null);
    const { operationsBetween, readFile } = await import("./file-reading.ts");
    const read = await readFile(file);
    if (!read.ok) return setFaults(read.faults);
    setFaults([]);
    const operations = operationsBetween(scheme, read.scheme);
    if (operations.length === 0) return setDone(`The sheet is what ${file.name} holds already.`);
    if (onDraw(operations)) setDone(`${file.name} is brought in. One step back takes it back.`);
  };

  return (
    <>
      <Command quiet onPress={() => input.current?.click()} asleepBecause={asleepBecause}>
        Bring in a file
      </Command>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label="Scheme file to bring in"
        onChange={({ target }) => {
          const [file] = target.files ?? [];
          target.value = ""; // so that the same file can be chosen again once it is mended
          if (file !== undefined) void bring(file);
        }}
      />
      {done !== null && (
        <p className="scheme-file-done" role="status">
          {done}
        </p>
      )}
      {faults.length > 0 && (
        <div className="field-fault" role="alert">
          <p>The file was not brought in, and nothing is changed:</p>
          <ul className="scheme-file-faults">
            {faults.map(({ pointer, detail }) => (
              <li key={pointer + detail}>
                {pointer === "" ? "" : <code>{pointer}</code>} {detail}
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
