import { useLayoutEffect, useRef, type ReactNode } from "react";
import { createRoot, type Root } from "react-dom/client";

/**
 * A part of the paper that is drawn by itself: what changes at every move neither waits for what is slow to draw nor makes
 * it begin anew.
 */
export function OwnRoot({ children }: { children: ReactNode }) {
  const place = useRef<SVGGElement>(null);
  const root = useRef<Root | null>(null);
  useLayoutEffect(() => {
    if (place.current === null) return undefined;
    const made = createRoot(place.current);
    root.current = made;
    return () => queueMicrotask(() => made.unmount()); // one root is not taken down while another is being drawn
  }, []);
  useLayoutEffect(() => root.current?.render(children));
  return <g ref={place} />;
}
