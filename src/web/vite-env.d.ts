declare module '*.svelte' {
  import type { Component } from 'svelte';

  // biome-ignore lint/suspicious/noExplicitAny: each component says itself what it takes
  const component: Component<any>;
  export default component;
}
declare module '*.css';

declare module 'exifr/dist/lite.esm.mjs' {
  export function parse(
    file: Blob | ArrayBuffer,
    options: object,
  ): Promise<Record<string, unknown> | undefined>;
}
