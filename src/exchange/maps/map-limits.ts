/** Letters of one map file: a coast of two million points has about 80 million. Our own choice. */
export const maxMapLetters = 100_000_000;
