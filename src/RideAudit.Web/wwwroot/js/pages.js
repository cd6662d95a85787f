import { el } from './dom.js';

// The pages come as SVG made by the program. They are read as XML and only what pages are drawn with is let in.

const drawing = new Set(['svg', 'g', 'path', 'rect', 'text', 'a', 'clipPath', 'defs', 'title']);

/** The pages as pictures in the page, sharp at any size, their text selectable and their links alive. */
export function sheets(drawn) {
  const fonts = drawn.at(-1);
  bringFonts(fonts);
  return drawn.slice(0, -1).map((source, index, all) => {
    const sheet = el('div', { class: 'page-sheet', role: 'group', 'aria-label': `Page ${index + 1} of ${all.length}` });
    const root = new DOMParser().parseFromString(source, 'image/svg+xml').documentElement;
    for (const node of [root, ...root.querySelectorAll('*')])
      if (!drawing.has(node.localName) || [...node.attributes].some(a => /^on/i.test(a.name) || (a.localName === 'href' && !/^(#|https?:)/.test(a.value)))) throw new Error('A page holds what no page is drawn with.');
    for (const link of root.querySelectorAll('a')) {
      if (link.getAttribute('href').startsWith('#')) continue;
      link.setAttribute('target', '_blank');
      link.setAttribute('rel', 'noopener noreferrer');
    }
    sheet.append(document.importNode(root, true));
    return sheet;
  });
}

function bringFonts(rules) {
  for (const [, family, data] of rules.matchAll(/font-family:\s*["']?([^;"'}]+)["']?[^}]*?base64,([A-Za-z0-9+/=]+)/g))
    document.fonts.add(new FontFace(family, Uint8Array.from(atob(data), c => c.charCodeAt(0))));
}

/** Page one as a PNG, three pixels a point. */
export async function picture(drawn) {
  const source = drawn[0];
  const inside = source.indexOf('>') + 1;
  const alone = `${source.slice(0, inside)}<style>${drawn.at(-1)}</style>${source.slice(inside)}`;
  const url = URL.createObjectURL(new Blob([alone], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.naturalWidth * 3;
    canvas.height = image.naturalHeight * 3;
    const context = canvas.getContext('2d');
    context.fillStyle = '#ffffff';
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => canvas.toBlob(b => (b ? resolve(b) : reject(new Error('No picture could be made.'))), 'image/png'));
  } finally {
    URL.revokeObjectURL(url);
  }
}
