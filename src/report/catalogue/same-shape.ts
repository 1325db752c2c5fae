/** What a second language has to fill: the same names with words of its own, so that a missing one does not compile. */
export type SameShape<T> = {
  readonly [K in keyof T]: T[K] extends string
    ? string
    : T[K] extends (...given: infer Given) => string
      ? (...given: Given) => string
      : SameShape<T[K]>;
};
