/** Points in any number of dimensions that answer "who is nearest?" and may leave one by one. */
export interface NearestPoints {
  /** Indices of the nearest points still there, all that are equally near; `except` is not asked. Empty when none is left. */
  nearest(point: readonly number[], except?: number): readonly number[];
  remove(index: number): void;
}

/**
 * Builds the tree (halved along its widest side at every level). Cost: n log^2 n to build, about log n per question.
 * Two distances within a billionth of each other count as equal, so that a regular grid has its ties.
 */
export function nearestPoints(points: readonly (readonly number[])[]): NearestPoints {
  const count = points.length;
  const order = Array.from({ length: count }, (_, i) => i);
  const side = new Int32Array(count);
  const present = new Int32Array(count);
  const placeOf = new Int32Array(count);
  const isThere = new Uint8Array(count).fill(1);
  build(0, count);

  function build(from: number, to: number): void {
    if (from >= to) return;
    const middle = (from + to) >> 1;
    const dimension = widest(points, order, from, to);
    const sorted = order.slice(from, to).sort((a, b) => points[a]![dimension]! - points[b]![dimension]!);
    for (let i = 0; i < sorted.length; i++) order[from + i] = sorted[i]!;
    side[middle] = dimension;
    present[middle] = to - from;
    placeOf[order[middle]!] = middle;
    build(from, middle);
    build(middle + 1, to);
  }

  function nearest(point: readonly number[], except = -1): readonly number[] {
    let best = Infinity;
    let found: number[] = [];
    const visit = (from: number, to: number): void => {
      if (from >= to) return;
      const middle = (from + to) >> 1;
      if (present[middle] === 0) return;
      const index = order[middle]!;
      if (isThere[index] && index !== except) {
        const distance = squaredDistance(points[index]!, point);
        if (distance < best * (1 - tie)) {
          best = distance;
          found = [index];
        } else if (distance <= best * (1 + tie)) found.push(index);
      }
      const across = point[side[middle]!]! - points[index]![side[middle]!]!;
      if (across < 0) visit(from, middle);
      else visit(middle + 1, to);
      if (across * across > best * (1 + tie)) return;
      if (across < 0) visit(middle + 1, to);
      else visit(from, middle);
    };
    visit(0, count);
    return found;
  }

  function remove(index: number): void {
    if (!isThere[index]) return;
    isThere[index] = 0;
    const place = placeOf[index]!;
    for (let from = 0, to = count; ; ) {
      const middle = (from + to) >> 1;
      present[middle]!--;
      if (middle === place) return;
      if (place < middle) to = middle;
      else from = middle + 1;
    }
  }
  return { nearest, remove };
}

const tie = 1e-9;

function squaredDistance(a: readonly number[], b: readonly number[]): number {
  let total = 0;
  for (let i = 0; i < a.length; i++) total += (a[i]! - b[i]!) ** 2;
  return total;
}

function widest(
  points: readonly (readonly number[])[],
  order: readonly number[],
  from: number,
  to: number,
): number {
  const dimensions = points[order[from]!]!.length;
  let best = 0;
  let greatest = -1;
  for (let d = 0; d < dimensions; d++) {
    let low = Infinity;
    let high = -Infinity;
    for (let i = from; i < to; i++) {
      const x = points[order[i]!]![d]!;
      if (x < low) low = x;
      if (x > high) high = x;
    }
    if (high - low > greatest) {
      best = d;
      greatest = high - low;
    }
  }
  return best;
}
