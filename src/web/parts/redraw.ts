/** A figure drawn again: what did not change stays, so that one stroke more costs one stroke. */

/** `text` is the SVG of one of our own figures. */
export function redraw(box: HTMLElement, text: string): void {
  const template = box.ownerDocument.createElement('template');
  template.innerHTML = text;
  const [now, next] = [box.firstElementChild, template.content.firstElementChild];
  if (now === null || next === null) {
    box.replaceChildren(template.content);
    return;
  }
  for (const { name, value } of next.attributes) {
    if (now.getAttribute(name) !== value) now.setAttribute(name, value);
  }
  replaceMiddle(now, next);
}

/** Alike at the beginning and alike at the end stay; what lies between is exchanged. */
function replaceMiddle(now: Element, next: Element): void {
  const before = [...now.childNodes];
  const after = [...next.childNodes];
  const shorter = Math.min(before.length, after.length);
  let first = 0;
  while (first < shorter && before[first]!.isEqualNode(after[first]!)) first += 1;
  let last = 0;
  while (last < shorter - first && before.at(-1 - last)!.isEqualNode(after.at(-1 - last)!)) last += 1;
  const stays = before[before.length - last] ?? null;
  for (const old of before.slice(first, before.length - last)) old.remove();
  for (const fresh of after.slice(first, after.length - last)) now.insertBefore(fresh, stays);
}
