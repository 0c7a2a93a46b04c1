/** The ground with nothing on it but where a container would stand: what is drawn where no sheet is. */
export const EmptyGround = () => (
  <svg className="trouble-ground" viewBox="0 0 544 150" width="544" height="150" aria-hidden="true">
    <path d="M156 10V126M388 10V126" stroke="var(--graphite-2)" strokeWidth="0.75" strokeDasharray="14 4 2 4" />
    <path d="M156 36H388V124H156Z" fill="none" stroke="var(--graphite)" strokeWidth="1.5" strokeDasharray="8 5" />
    <path
      d="M156 36h14v9h-14ZM374 36h14v9h-14ZM156 115h14v9h-14ZM374 115h14v9h-14Z"
      fill="none"
      stroke="var(--graphite)"
      strokeWidth="0.9"
    />
    <path d="M8 125H536" stroke="var(--ink)" strokeWidth="2.4" strokeLinecap="round" />
    <path d={tufts} fill="none" stroke="var(--graphite-2)" strokeWidth="0.7" />
  </svg>
);

const tufts = [30, 96, 150, 226, 300, 372, 430, 498]
  .map((x) => `M${x} 129l-7 8M${x + 7} 129l-7 8M${x + 14} 129l-7 8`)
  .join("");
