/**
 * Zeroed room for many small arrays that are kept for long: pieces of one large allocation, never handed out twice. A
 * separate allocation for each of ten thousand element matrices costs more than computing them (measured).
 */
export function numberRoom(length: number): Float64Array {
  if (length > PIECE) return new Float64Array(length);
  if (numbersUsed + length > numbers.length) {
    numbers = new Float64Array(CHUNK);
    numbersUsed = 0;
  }
  numbersUsed += length;
  return numbers.subarray(numbersUsed - length, numbersUsed);
}

/** The same for whole numbers. */
export function integerRoom(length: number): Int32Array {
  if (length > PIECE) return new Int32Array(length);
  if (integersUsed + length > integers.length) {
    integers = new Int32Array(CHUNK);
    integersUsed = 0;
  }
  integersUsed += length;
  return integers.subarray(integersUsed - length, integersUsed);
}

const CHUNK = 65_536;
const PIECE = 4096;
let numbers = new Float64Array(0);
let numbersUsed = 0;
let integers = new Int32Array(0);
let integersUsed = 0;
