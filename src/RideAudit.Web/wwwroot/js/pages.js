import { el } from './dom.js';
import { ruleName } from './words.js';

// The pages come as SVG made by the program. They are read as XML and only what pages are drawn with is let in.

const drawing = new Set(['svg', 'g', 'path', 'rect', 'text', 'a', 'clipPath', 'defs', 'title']);

/** The pages as pictures in the page, sharp at any size, their text selectable and their links alive. */
export function sheets(drawn) {
  bringFonts(drawn.at(-1));
  return drawn.slice(0, -1).map((source, index, all) => {
    const root = read(source);
    for (const link of root.querySelectorAll('a')) {
      const target = link.getAttribute('href');
      link.setAttribute('aria-label', nameOf(target));
      if (target.startsWith('#')) continue;
      link.setAttribute('target', '_blank');
      link.setAttribute('rel', 'noopener noreferrer');
    }
    return el('div', { class: 'page-sheet', role: 'group', 'aria-label': `Page ${index + 1} of ${all.length}` }, document.importNode(root, true));
  });
}

/** A drawing without text of its own, told by its words. */
export function asPicture(source, words) {
  const root = document.importNode(read(source), true);
  root.querySelector('title')?.remove();
  root.setAttribute('role', 'img');
  root.setAttribute('aria-label', words);
  return root;
}

/** The first page of those drawn as a PNG, at so many pixels a point. */
export async function picture(drawn, scale) {
  await Promise.all(bringFonts(drawn.at(-1)));
  const root = read(drawn[0]);
  const [, , width, height] = root.getAttribute('viewBox').split(' ').map(Number);
  const canvas = el('canvas', { width: Math.ceil(width * scale), height: Math.ceil(height * scale) });
  const context = canvas.getContext('2d');
  context.scale(scale, scale);
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, width, height);
  draw(context, root, root);
  return new Promise((resolve, reject) => canvas.toBlob(b => (b ? resolve(b) : reject(new Error('No picture could be made.'))), 'image/png'));
}

function read(source) {
  const root = new DOMParser().parseFromString(source, 'image/svg+xml').documentElement;
  for (const node of [root, ...root.querySelectorAll('*')])
    if (!drawing.has(node.localName) || [...node.attributes].some(a => /^on/i.test(a.name) || (a.localName === 'href' && !/^(#|https?:)/.test(a.value))))
      throw new Error(`A page holds ${node.localName}, which no page is drawn with.`);
  return root;
}

function nameOf(target) {
  const [, kind, which] = target.match(/^#(rule|ride)-(.+)$/) ?? [];
  return kind === 'rule' ? `To the finding on ${ruleName(which).toLowerCase()}` : kind === 'ride' ? `To ride ${which}` : `To ${target}`;
}

const brought = new Map();

// Fonts are cut down to what one review draws, so a later review brings its own under the same names.
function bringFonts(rules) {
  return [...rules.matchAll(/font-family:\s*["']?([^;"'}]+)["']?[^}]*?base64,([A-Za-z0-9+/=]+)/g)].map(([, family, data]) => {
    if (brought.has(family)) document.fonts.delete(brought.get(family));
    const font = new FontFace(family, Uint8Array.from(atob(data), c => c.charCodeAt(0)));
    brought.set(family, font);
    document.fonts.add(font);
    return font.load();
  });
}

// Draws a page's elements one by one: a picture of the SVG as a whole would be drawn without its fonts.
function draw(context, node, root) {
  for (const child of node.children) {
    context.save();
    const value = name => child.getAttribute(name);
    const clip = value('clip-path')?.match(/#([^)]+)/)?.[1];
    if (clip) context.clip(outline([...root.querySelectorAll('clipPath')].find(c => c.id === clip).firstElementChild));
    if (value('transform')) context.transform(...value('transform').match(/-?[\d.]+/g).map(Number));
    if (child.localName === 'g' || child.localName === 'a') draw(context, child, root);
    else if (child.localName === 'path' || child.localName === 'rect') paint(context, outline(child), value);
    else if (child.localName === 'text') letters(context, child.textContent, value);
    context.restore();
  }
}

function outline(shape) {
  if (shape.localName === 'path') return new Path2D(shape.getAttribute('d'));
  const path = new Path2D();
  path.rect(...['x', 'y', 'width', 'height'].map(name => Number(shape.getAttribute(name))));
  return path;
}

function paint(context, path, value) {
  if (value('fill') !== 'none') {
    context.fillStyle = value('fill') ?? '#000000';
    context.fill(path);
  }
  if (!value('stroke')) return;
  context.strokeStyle = value('stroke');
  context.lineWidth = Number(value('stroke-width') ?? 1);
  context.lineJoin = value('stroke-linejoin') ?? 'miter';
  context.setLineDash(value('stroke-dasharray')?.split(' ').map(Number) ?? []);
  context.stroke(path);
}

function letters(context, text, value) {
  context.font = `${value('font-size')}px "${value('font-family')}"`;
  context.fillStyle = value('fill');
  context.fontKerning = 'none';
  const across = value('x').split(' ').map(Number);
  const down = value('y').split(' ').map(Number);
  [...text].forEach((letter, i) => context.fillText(letter, across[i] ?? across.at(-1), down[i] ?? down.at(-1)));
}
