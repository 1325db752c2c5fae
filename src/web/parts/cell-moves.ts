/** From cell to cell by the keyboard alone, in the order of the paper sheet. */

/** Enter goes on: to the next cell of the sheet. */
export function nextCell(from: HTMLElement): void {
  const part = partOf(from);
  const cells = part === null ? [] : cellsIn(part);
  focusOn(cells[cells.indexOf(from) + 1] ?? firstAfter(part));
}

/** To the first cell after this belt. */
export function nextBelt(from: HTMLElement): void {
  focusOn(firstAfter(partOf(from)));
}

export function focusCell(sheet: HTMLElement, cell: string): void {
  const found = sheet.querySelector<HTMLElement>(`[data-cell="${CSS.escape(cell)}"]`);
  const folded = found?.closest('details');
  if (folded) folded.open = true;
  focusOn(found);
}

/** The head, a belt, or the end of the sheet: to look for the next cell in sixty belts would cost the key. */
function partOf(cell: HTMLElement): Element | null {
  return cell.closest('[data-sheet] > *');
}

function firstAfter(part: Element | null): HTMLElement | undefined {
  for (let next = part?.nextElementSibling; next; next = next.nextElementSibling) {
    const [first] = cellsIn(next);
    if (first !== undefined) return first;
  }
  return undefined;
}

function cellsIn(part: Element): HTMLElement[] {
  // What is folded away is not on the way.
  return [...part.querySelectorAll<HTMLElement>('[data-flow]')].filter(
    (cell) => cell.closest('details:not([open])') === null,
  );
}

function focusOn(cell: HTMLElement | null | undefined): void {
  if (!cell) return;
  cell.focus();
  // Behind what is typed already, never over it.
  if (cell instanceof HTMLTextAreaElement) cell.setSelectionRange(cell.value.length, cell.value.length);
}
