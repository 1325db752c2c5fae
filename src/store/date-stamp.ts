/** `2026-09-30-181205`: local day and time for the name of a folder, so that an officer finds last Friday. */
export function dateStamp(at: Date): string {
  const two = (n: number) => String(n).padStart(2, '0');
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return `${day}-${two(at.getHours())}${two(at.getMinutes())}${two(at.getSeconds())}`;
}
