// Elements are made of names and texts alone: nothing here ever parses markup.

/** An element. Attributes `text`, `on` (listeners) and `class` are known; the rest are set as they are. */
export function el(tag, attributes = {}, ...children) {
  return fill(document.createElement(tag), attributes, children);
}

/** An SVG element. */
export function svg(tag, attributes = {}, ...children) {
  return fill(document.createElementNS('http://www.w3.org/2000/svg', tag), attributes, children);
}

function fill(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (name === 'text') node.textContent = value;
    else if (name === 'on') for (const [event, listener] of Object.entries(value)) node.addEventListener(event, listener);
    else node.setAttribute(name, value === true ? '' : String(value));
  }
  node.append(...present(children));
  return node;
}

/** A part of the page by its id. */
export function part(id) {
  return document.getElementById(id);
}

/** Says something to those who listen instead of look. */
export function say(text) {
  part('said').textContent = text;
}

/** Children that are there: what a condition left out is passed over. */
export function present(children) {
  return children.flat(Infinity).filter(child => child !== null && child !== undefined && child !== false);
}
