// Text against what lies behind it, by the relative luminance of WCAG 2.2, from computed styles.
// Returns how many texts were measured, and those below `arguments[0]`.
const least = arguments[0];

// Any colour a style can compute to, as red, green, blue and alpha from 0 to 1.
const paint = Object.assign(document.createElement('canvas'), { width: 1, height: 1 })
  .getContext('2d', { willReadFrequently: true });
const known = new Map();
const colour = text => {
  if (!known.has(text)) {
    paint.clearRect(0, 0, 1, 1);
    paint.fillStyle = text;
    paint.fillRect(0, 0, 1, 1);
    known.set(text, Array.from(paint.getImageData(0, 0, 1, 1).data, part => part / 255));
  }
  return known.get(text);
};
const over = ([r, g, b, a], below) => [r, g, b].map((part, at) => part * a + below[at] * (1 - a));
const luminance = parts => {
  const [r, g, b] = parts.map(part => part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const ratio = (one, other) => {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
};

const canvas = (() => {
  const probe = document.body.appendChild(document.createElement('i'));
  probe.style.color = 'Canvas';
  const is = colour(getComputedStyle(probe).color);
  probe.remove();
  return is.slice(0, 3);
})();

// What an element of the page stands on.
const ground = element => {
  const layers = [];
  for (let at = element; at; at = at.parentElement) {
    const layer = colour(getComputedStyle(at).backgroundColor);
    layers.push(layer);
    if (layer[3] === 1) break;
  }
  return layers.reduceRight((below, layer) => over(layer, below), canvas);
};

// What a text in a drawing stands on: the filled shapes that lie under its middle.
const behind = (text, box) => {
  text.scrollIntoView({ block: 'center', behavior: 'instant' });
  const { x, y, width, height } = box();
  const stack = document.elementsFromPoint(x + width / 2, y + height / 2);
  const layers = [];
  for (const at of stack) {
    if (at.closest('text')) continue;
    if (!(at instanceof SVGGeometryElement)) return layers.reduceRight((below, it) => over(it, below), ground(at));
    const { fill, fillOpacity } = getComputedStyle(at);
    if (fill === 'none' || fill.startsWith('url')) continue;
    const [r, g, b, a] = colour(fill);
    layers.push([r, g, b, a * fillOpacity]);
  }
  return layers.reduceRight((below, it) => over(it, below), ground(text));
};

const opacity = element => {
  let all = 1;
  for (let at = element; at; at = at.parentElement) all *= getComputedStyle(at).opacity;
  return all;
};

let measured = 0;
const low = [];
const measure = (text, element, ink, below) => {
  const [r, g, b, a] = colour(ink);
  const is = ratio(over([r, g, b, a * opacity(element)], below), below);
  measured += 1;
  if (is < least) low.push({ text: text.trim().slice(0, 60), ratio: is, ink, behind: below.map(part => Math.round(part * 255)), class: element.className.baseVal ?? element.className });
};

const shown = element => element.checkVisibility({ visibilityProperty: true, opacityProperty: true })
  && !element.closest(':disabled, title, desc, script, style, noscript, .visually-hidden');

const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
for (let node; (node = walker.nextNode());) {
  const element = node.parentElement;
  if (!node.data.trim() || !shown(element)) continue;
  const range = document.createRange();
  range.selectNodeContents(node);
  if (!range.getClientRects().length) continue;
  const style = getComputedStyle(element);
  const drawn = element instanceof SVGElement;
  measure(node.data, element, drawn ? style.fill : style.color,
    drawn ? behind(element, () => range.getBoundingClientRect()) : ground(element));
}
for (const field of document.querySelectorAll('input:not([type=radio], [type=checkbox], [type=range]), textarea')) {
  if (!shown(field)) continue;
  if (field.value) measure(field.value, field, getComputedStyle(field).color, ground(field));
  else if (field.placeholder)
    measure(field.placeholder, field, getComputedStyle(field, '::placeholder').color, ground(field));
}
for (const element of document.querySelectorAll('body *')) {
  if (!(element instanceof HTMLElement) || !shown(element)) continue;
  for (const which of ['::before', '::after']) {
    const { content, color, backgroundColor } = getComputedStyle(element, which);
    if (!/^"[^"]*\S[^"]*"/.test(content)) continue;
    measure(content, element, color, over(colour(backgroundColor), ground(element)));
  }
}
return [measured, low];
