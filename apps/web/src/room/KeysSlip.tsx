import { useState } from "react";
import { Command } from "../controls/Command.tsx";
import { singleLetters } from "../keys/single-letters.ts";
import "./keys-slip.css";

export type KeyLine = readonly [key: string, does: string];

const everySheetsKeys: readonly KeyLine[] = [
  ["1–7", "turn to that sheet"],
  ["F6", "next region: title block, tray, drawing, notes, revisions"],
  ["N, Shift N", "next, former note"],
  [
    "+ − 0",
    "look closer, farther, at the whole: the view the focus is in, or the last one touched; 0 once more, all of them",
  ],
  ["Ctrl + arrows", "move the drawing aside under the eye"],
  ["O, Shift O", "round the building, on the picture of the whole"],
  ["I, Shift I", "look at it from higher up, from lower down"],
  ["X", "a section along a line, in the place of the picture, and back"],
  ["D", "the details of the chosen post, seat, pad, lock, tie or framed opening, and back"],
  ["Esc", "let go"],
  ["?", "this list"],
];

/** The keys of this sheet, laid on it; single letters can be switched off here. */
export function KeysSlip({ lines, onClose }: { lines: readonly KeyLine[]; onClose: () => void }) {
  const [letters, setLetters] = useState(singleLetters.on);
  const turn = () => {
    singleLetters.turn(!letters);
    setLetters(!letters);
  };
  return (
    <section className="keys-slip" role="dialog" aria-label="Keys of this sheet">
      <h2 className="caption">Keys of this sheet</h2>
      <dl>
        {[...lines, ...everySheetsKeys].map(([key, does]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <div className="twin-row">
        <Command onPress={turn}>{letters ? "Switch single letters off" : "Switch single letters on"}</Command>
        <Command quiet shortcut="Esc" onPress={onClose}>
          Take the slip away
        </Command>
      </div>
    </section>
  );
}
