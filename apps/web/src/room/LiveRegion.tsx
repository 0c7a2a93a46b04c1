import { useCallback, useState } from "react";

/** One polite line for those who hear the sheet; never the whole list. */
export const LiveRegion = ({ sentence }: { sentence: string }) => (
  <div className="unseen" role="status" aria-live="polite">
    {sentence}
  </div>
);

export function useSay(): { sentence: string; say: (sentence: string) => void } {
  const [sentence, setSentence] = useState("");
  // A trailing no-break space makes the same sentence, said twice, a change that is read again.
  const say = useCallback((next: string) => setSentence((last) => (last === next ? `${next}\u00a0` : next)), []);
  return { sentence, say };
}
