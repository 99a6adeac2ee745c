import { embeddedFonts } from './embeddedFonts.ts';
import type { Figure } from './figure.ts';
import { figureCsv } from './figureTable.ts';

/** Everything a drawing needs from the style sheet; written into a copy so that it stands alone. */
const carried = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-opacity',
  'stroke-linejoin',
  'stroke-linecap',
  'opacity',
  'font-family',
  'font-size',
  'font-weight',
  'font-variant-numeric',
  'text-anchor',
] as const;

const titleRoom = 44;
const noteRoom = 26;

/** The plot as a file of its own: title above, definition and run below, colours as on the screen. */
export function standaloneSvg(svg: SVGSVGElement, figure: Figure): string {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const originals = [svg, ...svg.querySelectorAll('*')];
  const copies = [copy, ...copy.querySelectorAll('*')];
  originals.forEach((original, index) => {
    const style = getComputedStyle(original);
    const target = copies[index] as SVGElement;
    target.removeAttribute('style');
    for (const property of carried) target.style.setProperty(property, style.getPropertyValue(property));
    for (const name of ['role', 'tabindex', 'aria-pressed', 'data-spot', 'class'])
      target.removeAttribute(name);
  });
  for (const reach of copy.querySelectorAll('circle[r="9"]')) reach.remove();
  const { width, height } = svg.viewBox.baseVal;
  const root = getComputedStyle(document.documentElement);
  const body = getComputedStyle(document.body);
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('viewBox', `-12 ${-titleRoom} ${width + 24} ${height + titleRoom + noteRoom}`);
  copy.setAttribute('width', String(width + 24));
  copy.setAttribute('height', String(height + titleRoom + noteRoom));
  const page = element('rect', {
    x: -12,
    y: -titleRoom,
    width: width + 24,
    height: height + titleRoom + noteRoom,
  });
  page.style.fill = body.backgroundColor;
  copy.prepend(page);
  const text = (content: string, y: number, size: number, weight: number, family: string, colour: string) => {
    const line = element('text', { x: 0, y });
    line.textContent = content;
    line.style.cssText = `font: ${weight} ${size}px ${family}; fill: ${colour}`;
    copy.append(line);
  };
  text(figure.title, -20, 15, 600, root.getPropertyValue('--serif').trim(), body.color);
  const quiet = getComputedStyle(svg.querySelector('.plot-ticks text, .plot-cell-text') ?? svg).fill;
  text(`${figure.note}; ${figure.runs}`, height + 16, 11, 400, root.getPropertyValue('--sans').trim(), quiet);
  return new XMLSerializer().serializeToString(copy);
}

function element(name: string, attributes: Record<string, number>): SVGElement {
  const made = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  return made;
}

/** The plot as a PNG, `scale` pixels for each CSS pixel. */
export async function pngOf(svgText: string, scale = 3): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svgText)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(image.width * scale);
  canvas.height = Math.round(image.height * scale);
  canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('no PNG'))), 'image/png');
  });
}

const families = ['Literata Variable', 'Hanken Grotesk Variable'];

function withFonts(svgText: string, faces: string): string {
  return faces === '' ? svgText : svgText.replace(/(<svg[^>]*>)/, `$1<style>${faces}</style>`);
}

export type ExportKind = 'csv' | 'svg' | 'png';

/** Hands the figure to the person as a file; the name says unit, run and plot. */
export async function saveFigure(
  kind: ExportKind,
  figure: Figure,
  svg: SVGSVGElement,
  stem: string,
): Promise<void> {
  const blob =
    kind === 'csv'
      ? new Blob([figureCsv(figure)], { type: 'text/csv' })
      : kind === 'svg'
        ? new Blob([standaloneSvg(svg, figure)], { type: 'image/svg+xml' })
        : await pngOf(withFonts(standaloneSvg(svg, figure), await embeddedFonts(families)));
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = `${stem}-${figure.id}.${kind}`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
