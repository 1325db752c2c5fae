/** Text for the page: everything a person typed is shown as text, never read as markup. */
export function escapeText(text: string): string {
  return text.replace(/\p{Cc}/gu, keepSpace).replace(/[&<>"']/g, (sign) => entities[sign]!);
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Control characters are not allowed in a page; tab and line ends stay. */
function keepSpace(sign: string): string {
  return sign === '\n' || sign === '\t' ? sign : '';
}
