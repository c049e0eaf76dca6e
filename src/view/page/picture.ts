import fontAddress from '@fontsource-variable/national-park/files/national-park-latin-wght-normal.woff2?url';

/** Properties that make the drawing look as it does; written onto each piece, for there is no stylesheet outside. */
const drawn = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'stroke-opacity',
  'opacity',
  'paint-order',
  'vector-effect',
  'font-size',
  'font-weight',
  'text-anchor',
  'dominant-baseline',
  'visibility',
  'display',
] as const;

/** The drawing as a file of its own: looks written out, paper behind it, the typeface inside. */
export async function pictureSvg(svg: SVGSVGElement, title: string): Promise<string> {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  copyLooks(svg, copy);
  const { width, height } = svg.getBoundingClientRect();
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(Math.round(width)));
  copy.setAttribute('height', String(Math.round(height)));
  if (!copy.hasAttribute('viewBox')) copy.setAttribute('viewBox', `0 0 ${width} ${height}`);
  copy.prepend(heading(title), await typeface(), paper());
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(copy)}\n`;
}

/** The same picture in dots, twice as many as on the screen. */
export async function picturePng(svg: SVGSVGElement, title: string): Promise<Blob> {
  const { width, height } = svg.getBoundingClientRect();
  const text = await pictureSvg(svg, title);
  const address = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(width * 2);
    canvas.height = Math.round(height * 2);
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise<Blob>((resolve, reject) => {
      canvas.toBlob((blob) => (blob === null ? reject(new Error('no picture')) : resolve(blob)));
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** What a person moves things with is not part of the picture, nor is what no picture keeps: life size. */
const NOT_DRAWN = '[role="slider"], .handles, .drawn-true-size, [data-not-drawn]';

function copyLooks(from: Element, to: Element): void {
  const looks = getComputedStyle(from);
  for (const property of drawn) {
    const value = looks.getPropertyValue(property);
    if (value !== '') to.setAttribute(property, value);
  }
  to.removeAttribute('class');
  const words = from.getAttribute('data-in-picture');
  if (words !== null) {
    to.removeAttribute('data-in-picture');
    to.textContent = words;
  }
  const [fromChildren, toChildren] = [Array.from(from.children), Array.from(to.children)];
  fromChildren.forEach((child, place) => {
    const copy = toChildren[place];
    if (copy === undefined) return;
    if (child.matches(NOT_DRAWN)) copy.remove();
    else copyLooks(child, copy);
  });
}

const svgElement = (name: string): SVGElement =>
  document.createElementNS('http://www.w3.org/2000/svg', name);

function heading(title: string): SVGElement {
  const element = svgElement('title');
  element.textContent = title;
  return element;
}

function paper(): SVGElement {
  const element = svgElement('rect');
  element.setAttribute('width', '100%');
  element.setAttribute('height', '100%');
  element.setAttribute('fill', getComputedStyle(document.body).getPropertyValue('--paper').trim());
  return element;
}

async function typeface(): Promise<SVGElement> {
  const bytes = new Uint8Array(await (await fetch(fontAddress)).arrayBuffer());
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  const element = svgElement('style');
  element.textContent =
    `@font-face{font-family:"National Park";font-weight:200 800;` +
    `src:url(data:font/woff2;base64,${btoa(binary)}) format("woff2")}` +
    `text{font-family:"National Park",sans-serif;font-variant-numeric:tabular-nums}`;
  return element;
}
