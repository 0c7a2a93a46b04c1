/**
 * The same function, which works out each different question once: containers repeat, and with them their members. Questions
 * are told apart by all they say; the least recently asked are forgotten.
 */
export function remembered<Question, Answer>(answerTo: (question: Question) => Answer): (question: Question) => Answer {
  const known = new Map<string, Answer>();
  return (question) => {
    const key = JSON.stringify(question);
    const found = known.get(key);
    const answer = found === undefined ? answerTo(question) : found;
    known.delete(key);
    known.set(key, answer);
    for (const oldest of known.keys()) if (known.size > MOST_KEPT) known.delete(oldest);
    return answer;
  };
}

const MOST_KEPT = 1024;
