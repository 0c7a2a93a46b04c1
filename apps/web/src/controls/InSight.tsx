import { useEffect, useRef, type ReactNode } from "react";

/** Brings what is laid down into sight, wherever the margin was scrolled to. */
export function InSight({ children }: { children: ReactNode }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    place.current?.scrollIntoView({ block: "nearest" }); // some browsers give a promise back, which is no clean-up
  }, []);
  return <div ref={place}>{children}</div>;
}
