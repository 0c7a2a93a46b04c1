import { useEffect, useState } from "react";

/**
 * A part of the program that is fetched beside what stands on the sheet: the hook gives null until it is there. Where it
 * cannot be fetched, whoever waits for it throws, and is asked to try again by the boundary around.
 */
export function laterPart<Part extends object>(fetchPart: () => Promise<Part>): () => Part | null {
  let part: Part | null = null;
  let underway: Promise<Part> | null = null;

  const ask = async (): Promise<Part> => {
    underway ??= fetchPart();
    try {
      part = await underway;
      return part;
    } catch (error) {
      underway = null; // so that the next who wants it asks anew
      throw error;
    }
  };

  return function useLaterPart() {
    const [come, setCome] = useState<{ part: Part } | { why: unknown } | null>(null);
    const there = part !== null || come !== null;
    useEffect(() => {
      if (there) return;
      ask().then(
        (fetched) => setCome({ part: fetched }),
        (why: unknown) => setCome({ why }),
      );
    }, [there]);
    if (come !== null && "why" in come && part === null) throw come.why;
    return part;
  };
}
