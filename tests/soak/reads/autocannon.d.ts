/** As much of autocannon as is used here; it brings no types of its own. */
declare module "autocannon" {
  export interface Options {
    url: string;
    headers?: Record<string, string>;
    connections?: number;
    /** Seconds. */
    duration?: number;
  }
  export interface Result {
    /** Answers a second. */
    requests: { average: number };
    non2xx: number;
  }
  export default function autocannon(options: Options): Promise<Result>;
}
