/** Keeps the screens in this browser, so that they open with the server gone. */

export function startWorker(): void {
  if (!('serviceWorker' in navigator)) return;
  // Refused in private windows: the screens work, but only while the server answers.
  navigator.serviceWorker.register('/sw.js').catch(() => {});
}
