import { useLayoutEffect, useRef, useState, type ReactNode } from "react";
import { createRoot, type Root } from "react-dom/client";

/**
 * A part of the paper that is drawn by itself: what changes at every move neither waits for what is slow to draw nor makes
 * it begin anew. What throws in it is thrown here, so that the boundary around the paper says it.
 */
export function OwnRoot({ children }: { children: ReactNode }) {
  const place = useRef<SVGGElement>(null);
  const root = useRef<Root | null>(null);
  const [failed, setFailed] = useState<{ error: unknown } | null>(null);
  useLayoutEffect(() => {
    if (place.current === null) return undefined;
    const made = createRoot(place.current, { onUncaughtError: (error) => setFailed({ error }) });
    root.current = made;
    return () => queueMicrotask(() => made.unmount()); // one root is not taken down while another is being drawn
  }, []);
  useLayoutEffect(() => root.current?.render(children));
  if (failed !== null) throw failed.error;
  return <g ref={place} />;
}
