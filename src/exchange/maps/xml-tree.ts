/** XML text to a plain tree and back to text, for KML and GPX. Nothing outside the text is ever fetched. */

import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { type MapFinding, mapFinding } from '../../survey/map-area.ts';
import { maxMapLetters } from './map-limits.ts';

/** Every child is a list, attributes begin with @, text is #text; prefixes of namespaces are taken off. */
export interface XmlNode {
  readonly [name: string]: readonly (XmlNode | string)[] | string;
}

/** Either the tree or why there is none. */
export type XmlReading =
  | { readonly root: XmlNode; readonly fault: null }
  | { readonly root: null; readonly fault: MapFinding };

/**
 * The tree of an XML text. Texts that declare a document type are refused, because entities could name other files or swell
 * without end; no map needs one. The five signs of XML and numbered letters are put in by ourselves.
 */
export function readXml(text: string, format: 'KML' | 'GPX'): XmlReading {
  if (text.length > maxMapLetters) {
    return {
      root: null,
      fault: mapFinding('map-too-large', null, { letters: text.length, limit: maxMapLetters }),
    };
  }
  const plain = text.replace(/^\ufeff/, '');
  if (/<!\s*(DOCTYPE|ENTITY)/i.test(plain))
    return { root: null, fault: mapFinding('map-with-entities', null) };
  try {
    const verdict = XMLValidator.validate(plain);
    if (verdict !== true) {
      const detail = `${verdict.err.msg} (${verdict.err.line}:${verdict.err.col})`;
      return { root: null, fault: mapFinding('map-not-understood', null, { format, detail }) };
    }
    return { root: parser.parse(plain) as XmlNode, fault: null };
  } catch (error) {
    return { root: null, fault: mapFinding('map-not-understood', null, { format, detail: String(error) }) };
  }
}

const parser = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: '@',
  removeNSPrefix: true,
  parseTagValue: false,
  parseAttributeValue: false,
  processEntities: false,
  ignoreDeclaration: true,
  ignorePiTags: true,
  isArray: (_name, _path, _isLeaf, isAttribute) => !isAttribute,
});

export function childrenOf(node: XmlNode, name: string): readonly XmlNode[] {
  const found = node[name];
  if (found === undefined || typeof found === 'string') return [];
  return found.map((child) => (typeof child === 'string' ? { '#text': child } : child));
}

/** The text of the first child of that name; null when it is not there or empty. */
export function textOf(node: XmlNode, name: string): string | null {
  const child = childrenOf(node, name)[0];
  return child === undefined ? null : ownText(child);
}

export function ownText(node: XmlNode): string | null {
  const text = node['#text'];
  const written = typeof text === 'string' ? unescapeXml(text).trim() : '';
  return written === '' ? null : written;
}

export function attributeOf(node: XmlNode, name: string): string | null {
  const text = node[`@${name}`];
  return typeof text === 'string' ? unescapeXml(text) : null;
}

const signs: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

function unescapeXml(text: string): string {
  return text.replace(
    /&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|(lt|gt|amp|quot|apos));/gi,
    (whole, hex, decimal, name) => {
      if (name !== undefined) return signs[String(name).toLowerCase()] ?? whole;
      const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
      return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : '';
    },
  );
}

/** Text for an element or attribute; letters XML cannot carry are dropped. */
export function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replace(/[<>&"']/g, (sign) => `&${Object.entries(signs).find(([, one]) => one === sign)![0]};`);
}
