import { once } from "node:events";
import net from "node:net";

/** A mail server on loopback that takes everything, or turns every recipient away: the least of RFC 5321. */
export interface MailServer {
  url: string;
  /** Letters as they came, without the dot-stuffing of the protocol. */
  letters: string[];
  close(): Promise<void>;
}

export async function mailServer({ refuses = false, host = "127.0.0.1" } = {}): Promise<MailServer> {
  const letters: string[] = [];
  const server = net.createServer((socket) => serve(socket, refuses, (letter) => letters.push(letter)));
  server.listen(0, host);
  await once(server, "listening");
  const address = server.address();
  const port = address !== null && typeof address === "object" ? address.port : 0;
  const close = async (): Promise<void> => {
    server.close();
    await once(server, "close");
  };
  return { url: `smtp://${host}:${port}`, letters, close };
}

function serve(socket: net.Socket, refuses: boolean, take: (letter: string) => void): void {
  let waiting = "";
  let letter: string[] | undefined;
  const say = (line: string) => socket.write(`${line}\r\n`);
  say("220 mail.example ready");
  socket.on("data", (part) => {
    const lines = (waiting + part.toString("utf8")).split("\r\n");
    waiting = lines.pop() ?? "";
    for (const line of lines) {
      if (letter === undefined) say(answer(line));
      else if (line === ".") {
        take(letter.join("\n"));
        letter = undefined;
        say("250 taken");
      } else letter.push(line.replace(/^\.\./, "."));
    }
  });
  const answer = (line: string): string => {
    if (/^EHLO/i.test(line)) return "250 mail.example";
    if (/^STARTTLS/i.test(line)) return "502 not known here";
    if (/^RCPT/i.test(line) && refuses) return "550 no such mailbox";
    if (/^DATA/i.test(line)) {
      letter = [];
      return "354 go on";
    }
    return /^QUIT/i.test(line) ? "221 bye" : "250 ok";
  };
}
