/** A number with its noun, in English or French: "1 station", "12 stations". Numbers come formatted. */

/** The plural may be left out where it is the noun and an s. */
export function counted(n: string | number, one: string, many = `${one}s`): string {
  return `${n} ${isSaidAsOne(`${n}`) ? one : many}`;
}

/** Whether a number takes the singular. None takes the plural here, as it must in English and may in French. */
export function isSaidAsOne(n: string): boolean {
  return n === '1';
}
