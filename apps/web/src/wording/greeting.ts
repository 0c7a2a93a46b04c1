const counts = ["Nothing", "One thing", "Two things", "Three things", "Four things"];

/** The headline of the desk: what waits for someone, or what they owe where nothing else waits. */
export function greeting(waiting: number, owed: number, name: string): string {
  const count = waiting > 0 ? waiting : owed;
  const things = counts[count] ?? `${count} things`;
  if (waiting === 0 && owed > 0) return `${things} ${owed === 1 ? "is" : "are"} owed by you, ${name}.`;
  return `${things} ${count < 2 ? "waits" : "wait"} for you, ${name}.`;
}
