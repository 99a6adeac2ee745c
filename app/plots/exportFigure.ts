import { embeddedFonts } from './embeddedFonts.ts';
import type { Figure } from './figure.ts';
import { figureCsv } from './figureTable.ts';
import { linesWithin } from './lineBreaks.ts';

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

const edge = 12;
/** Room between the drawing and the text above it, and the one below, px */
const gap = 12;

interface Lettering {
  size: number;
  weight: number;
  family: string;
  colour: string;
}

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
  const quiet = getComputedStyle(svg.querySelector('.plot-ticks text, .plot-cell-text') ?? svg).fill;
  const title = written(figure.title, width, {
    size: 15,
    weight: 600,
    family: root.getPropertyValue('--serif').trim(),
    colour: body.color,
  });
  const note = written(`${figure.note}; ${figure.runs}`, width, {
    size: 11,
    weight: 400,
    family: root.getPropertyValue('--sans').trim(),
    colour: quiet,
  });
  const above = edge + title.height + gap;
  const place = {
    x: -edge,
    y: -above,
    width: width + 2 * edge,
    height: above + height + note.height + edge,
  };
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('viewBox', `${place.x} ${place.y} ${place.width} ${place.height}`);
  copy.setAttribute('width', String(place.width));
  copy.setAttribute('height', String(place.height));
  const page = element('rect', place);
  page.style.fill = body.backgroundColor;
  copy.prepend(page);
  copy.append(...title.at(-gap - title.height), ...note.at(height));
  return new XMLSerializer().serializeToString(copy);
}

/** A text of as many lines as the width asks for; `at` places them below a height. */
function written(content: string, width: number, { size, weight, family, colour }: Lettering) {
  const measure = document.createElement('canvas').getContext('2d')!;
  measure.font = `${weight} ${size}px ${family}`;
  // Who opens the file may have wider letters than ours.
  const lines = linesWithin(content, 0.9 * width, (line) => measure.measureText(line).width);
  const step = 1.35 * size;
  return {
    height: lines.length * step,
    at: (top: number) =>
      lines.map((words, order) => {
        const line = element('text', { x: 0, y: top + order * step + size });
        line.textContent = words;
        line.style.cssText = `font: ${weight} ${size}px ${family}; fill: ${colour}`;
        return line;
      }),
  };
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
