/** From cell to cell by the keyboard alone, in the order of the paper sheet. */

/** Enter goes on: to the next cell of the sheet. */
export function nextCell(from: HTMLElement): void {
  const cells = cellsOf(from);
  focusOn(cells[cells.indexOf(from) + 1]);
}

/** To the first cell after this belt. */
export function nextBelt(from: HTMLElement): void {
  const belt = from.closest('section');
  const cells = cellsOf(from);
  const after = cells.slice(cells.indexOf(from) + 1).find((cell) => belt === null || !belt.contains(cell));
  focusOn(after);
}

export function focusCell(sheet: HTMLElement, cell: string): void {
  const found = sheet.querySelector<HTMLElement>(`[data-cell="${CSS.escape(cell)}"]`);
  const folded = found?.closest('details');
  if (folded) folded.open = true;
  focusOn(found);
}

function cellsOf(from: HTMLElement): HTMLElement[] {
  const cells = from.closest('[data-sheet]')?.querySelectorAll<HTMLElement>('[data-flow]') ?? [];
  // What is folded away is not on the way.
  return [...cells].filter((cell) => cell.closest('details:not([open])') === null);
}

function focusOn(cell: HTMLElement | null | undefined): void {
  if (!cell) return;
  cell.focus();
  // Behind what is typed already, never over it.
  if (cell instanceof HTMLTextAreaElement) cell.setSelectionRange(cell.value.length, cell.value.length);
}
