/** How the shapes of a drawing look, for a file that has no style sheet. */
const looks = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'paint-order',
  'font-family',
  'font-size',
  'font-weight',
  'text-anchor',
];

/** A drawing as an SVG file of its own: what it looks like in the light theme is written into it, so that it opens anywhere. */
export function drawingFile(drawing: SVGSVGElement, title: string): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const copies = [copy, ...copy.querySelectorAll('*')];
  const { dataset } = document.documentElement;
  const { theme } = dataset;
  dataset.theme = 'light';
  for (const [at, shape] of [drawing, ...drawing.querySelectorAll('*')].entries()) {
    const look = getComputedStyle(shape);
    const around = at > 0 && shape.parentElement ? getComputedStyle(shape.parentElement) : undefined;
    for (const name of looks) {
      const value = look.getPropertyValue(name);
      // A hatch is named by the drawing itself; all else passes on to what is inside.
      if (value.startsWith('url(')) continue;
      if (value === around?.getPropertyValue(name)) copies[at]?.removeAttribute(name);
      else copies[at]?.setAttribute(name, value);
    }
    copies[at]?.removeAttribute('class');
  }
  if (theme) dataset.theme = theme;
  else delete dataset.theme;
  const { width, height } = drawing.viewBox.baseVal;
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  // What is there for the finger alone.
  for (const path of copy.querySelectorAll('[data-line]')) path.remove();
  const add = (name: string, text: string) => {
    const added = document.createElementNS(copy.namespaceURI, name);
    added.textContent = text;
    copy.prepend(added);
    return added;
  };
  const paper = add('rect', '');
  for (const [name, value] of Object.entries({ width: '100%', height: '100%', fill: '#fff', stroke: 'none' }))
    paper.setAttribute(name, value);
  add('desc', copy.getAttribute('aria-label') ?? '');
  add('title', title);
  return new XMLSerializer().serializeToString(copy);
}
