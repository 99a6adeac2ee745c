/** Latin, and the general punctuation and letters that plots print. */
const sample = 0x41;

/**
 * The window's own typefaces as `@font-face` rules with their files inside, so that a picture drawn apart from the
 * page keeps them. Empty when a face cannot be read: the picture then uses the reader's own.
 */
export async function embeddedFonts(families: readonly string[]): Promise<string> {
  const rules = [...document.styleSheets].flatMap((sheet) => {
    try {
      return [...sheet.cssRules].filter((rule) => rule instanceof CSSFontFaceRule);
    } catch {
      return [];
    }
  });
  const wanted = rules.filter(({ style }) => {
    const family = style.getPropertyValue('font-family').replaceAll(/["']/g, '');
    return (
      families.includes(family) &&
      style.getPropertyValue('font-style') !== 'italic' &&
      covers(style.getPropertyValue('unicode-range'), sample)
    );
  });
  const written = await Promise.all(
    wanted.map(async (rule) => {
      const address = /url\(["']?([^"')]+)["']?\)/.exec(rule.style.getPropertyValue('src'))?.[1];
      if (!address) return '';
      try {
        const response = await fetch(new URL(address, rule.parentStyleSheet?.href ?? document.baseURI));
        const data = await dataAddress(await response.blob());
        return rule.cssText.replace(/src:[^;]+;/, `src: url("${data}") format("woff2");`);
      } catch {
        return '';
      }
    }),
  );
  return written.join('\n');
}

/** Does `U+0-FF, U+131` hold a code point? A face without a range holds all. */
export function covers(range: string, codePoint: number): boolean {
  if (range.trim() === '') return true;
  return range.split(',').some((part) => {
    const [low = '', high = low] = part.trim().replace(/^U\+/i, '').split('-');
    const from = Number.parseInt(low.replaceAll('?', '0'), 16);
    const to = Number.parseInt(high.replaceAll('?', 'F'), 16);
    return codePoint >= from && codePoint <= to;
  });
}

function dataAddress(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(blob);
  });
}
