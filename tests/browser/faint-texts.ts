import { expect, type Page } from './harness.ts';

/** Drawing texts on the screen under 4.5 : 1 on the paper, tone or halo that their letters lie on, by pixels. */
export async function faintTexts(
  page: Page,
  when: string,
  drawing = 'svg.section',
): Promise<string[]> {
  await page.mouse.move(2, 2);
  // The policy refuses an inline style sheet, so the letters are made clear one by one.
  const texts = await page.evaluate((svg) => {
    const channels = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
    return [...document.querySelectorAll<SVGTextElement>(`${svg} text`)].flatMap((text) => {
      const pieces = [...text.querySelectorAll('tspan, textPath')].filter(
        (piece): piece is SVGElement => piece.childElementCount === 0,
      );
      const drawn = (pieces.length > 0 ? pieces : [text]).map((piece) => ({
        words: piece.textContent,
        colour: channels(getComputedStyle(piece).fill),
        box: piece.getBoundingClientRect().toJSON() as DOMRect,
      }));
      for (const piece of [text, ...pieces]) {
        piece.style.setProperty('fill', 'transparent', 'important');
      }
      return drawn;
    });
  }, drawing);
  expect(texts.length, when).toBeGreaterThan(0);
  const picture = (await page.screenshot()).toString('base64');
  const faint = await page.evaluate(
    async ({ texts: all, picture: data }) => {
      const image = new Image();
      image.src = `data:image/png;base64,${data}`;
      await image.decode();
      const canvas = document.createElement('canvas');
      canvas.width = image.width;
      canvas.height = image.height;
      const pen = canvas.getContext('2d', { willReadFrequently: true });
      pen?.drawImage(image, 0, 0);
      const luminance = (rgb: readonly number[]): number => {
        const [r = 0, g = 0, b = 0] = rgb.map((value) => {
          const share = value / 255;
          return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * r + 0.7152 * g + 0.0722 * b;
      };
      const contrast = (a: readonly number[], b: readonly number[]): number => {
        const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
        return (high + 0.05) / (low + 0.05);
      };
      let looked = 0;
      const faintOnes = all.flatMap(({ words, colour, box }) => {
        if (words.trim() === '' || box.width < 1) return [];
        // what stands off the screen is looked at when it is scrolled to
        const bottom = box.y + box.height;
        if (box.x < 0 || box.y < 0 || box.x + box.width > image.width || bottom > image.height) {
          return [];
        }
        looked++;
        // The middle of the box: a turned label's box reaches into its neighbours at the corners.
        const [x, y] = [box.x + box.width * 0.3, box.y + box.height * 0.3];
        const [w, h] = [Math.max(1, box.width * 0.4), Math.max(1, box.height * 0.4)];
        const pixels = pen?.getImageData(x, y, w, h).data ?? new Uint8ClampedArray();
        const counts = new Map<string, number>();
        for (let at = 0; at < pixels.length; at += 4) {
          const key = `${pixels[at]},${pixels[at + 1]},${pixels[at + 2]}`;
          counts.set(key, (counts.get(key) ?? 0) + 1);
        }
        const [under = '0,0,0'] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
        const ratio = contrast(colour, under.split(',').map(Number));
        return !(ratio >= 4.5) ? [`${words} on ${under}: ${ratio.toFixed(2)}`] : [];
      });
      return looked > 0 ? faintOnes : ['no text stands on the screen'];
    },
    { texts, picture },
  );
  await page.evaluate((svg) => {
    const letters = ['text', 'tspan', 'textPath'].map((part) => `${svg} ${part}`).join();
    for (const text of document.querySelectorAll<SVGElement>(letters)) {
      text.style.removeProperty('fill');
    }
  }, drawing);
  return faint.map((text) => `${when}: ${text}`);
}
