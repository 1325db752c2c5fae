// Standard types that exist in Node and in every browser, declared one by one
// because the pure rooms are compiled without Node and without the DOM.

interface TextDecoderInstance {
  decode(input?: Uint8Array): string;
}

declare const TextDecoder: {
  new (label?: string, options?: { fatal?: boolean; ignoreBOM?: boolean }): TextDecoderInstance;
};

interface TextEncoderInstance {
  encode(input?: string): Uint8Array;
}

declare const TextEncoder: { new (): TextEncoderInstance };
