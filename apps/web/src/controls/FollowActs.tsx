import { useState } from "react";
import { Command } from "./Command.tsx";
import { Refused } from "./Refused.tsx";
import { WordsField } from "./WordsField.tsx";

/** One thing someone may do about a matter. */
export interface FollowAct {
  command: string;
  /** True where it says something: it sleeps until that is written. */
  needsWords: boolean;
  asleepBecause?: string | undefined;
  /** `clear` empties the field, once the service has taken what stood there. */
  onPress: (words: string, clear: () => void) => void;
}

/** What someone writes about a matter, and what they may do about it. */
export function FollowActs({ label, acts, error }: { label: string; acts: readonly FollowAct[]; error: unknown }) {
  const [text, setText] = useState("");
  const words = text.trim();
  return (
    <div className="matter-acts">
      <WordsField label={label} text={text} onText={setText} />
      <div className="twin-row">
        {acts.map(({ command, needsWords, asleepBecause, onPress }) => (
          <Command
            key={command}
            onPress={() => onPress(words, () => setText(""))}
            asleepBecause={asleepBecause ?? (needsWords && words === "" ? "Write it first." : undefined)}
          >
            {command}
          </Command>
        ))}
      </div>
      <Refused error={error} />
    </div>
  );
}
