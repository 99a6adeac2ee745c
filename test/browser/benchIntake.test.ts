import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { patient, sitAtTheBench } from './benchWindow.ts';

const { openNotebook, unitOf } = sitAtTheBench();
const unit = 'orrinvale-ember-65';

/** Exif by hand (CIPA DC-008), little-endian: a GPS directory with the latitude 51° 28′ 38″ N. */
function exifWithPlace(): Buffer {
  const bytes = Buffer.alloc(88);
  bytes.write('II', 0, 'latin1');
  bytes.writeUInt16LE(42, 2);
  bytes.writeUInt32LE(8, 4);
  const entry = (at: number, tag: number, type: number, count: number, value: number) => {
    bytes.writeUInt16LE(tag, at);
    bytes.writeUInt16LE(type, at + 2);
    bytes.writeUInt32LE(count, at + 4);
    bytes.writeUInt32LE(value, at + 8);
  };
  bytes.writeUInt16LE(1, 8);
  entry(10, 0x8825, 4, 1, 26);
  bytes.writeUInt16LE(2, 26);
  entry(28, 1, 2, 2, 0x4e);
  entry(40, 2, 5, 3, 60);
  [51, 1, 28, 1, 38, 1].forEach((value, index) => {
    bytes.writeUInt32LE(value, 60 + 4 * index);
  });
  return bytes;
}
const place = exifWithPlace().subarray(60, 84);

/** A picture as a telephone takes it: drawn and coded by the browser, with the place put into its Exif. */
async function telephonePicture(page: Page): Promise<Buffer> {
  const plain = Buffer.from(
    await page.evaluate(async () => {
      const canvas = new OffscreenCanvas(64, 40);
      const context = canvas.getContext('2d')!;
      context.fillStyle = '#467';
      context.fillRect(0, 0, 64, 40);
      const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
      return [...new Uint8Array(await blob.arrayBuffer())];
    }),
  );
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), exifWithPlace()]);
  const head = Buffer.from([0xff, 0xe1, (body.length + 2) >> 8, (body.length + 2) & 255]);
  return Buffer.concat([plain.subarray(0, 2), head, body, plain.subarray(2)]);
}

/** From here on the window remembers what it shows as pictures; its policy lets nobody fetch them by address. */
async function keepBlobs(page: Page): Promise<void> {
  await page.evaluate(() => {
    const make = URL.createObjectURL.bind(URL);
    URL.createObjectURL = (object) => {
      Object.assign(window, { lastBlob: object });
      return make(object);
    };
  });
}
async function lastBlob(page: Page): Promise<number[]> {
  return page.evaluate(async () => {
    const { lastBlob: blob } = window as unknown as { lastBlob: Blob };
    return [...new Uint8Array(await blob.arrayBuffer())];
  });
}

/** Drops or pastes a picture onto the form, as a hand does. */
async function give(page: Page, how: 'drop' | 'paste', name: string, picture: Buffer): Promise<void> {
  await page.evaluate(
    ([event, file, base64]) => {
      const bytes = Uint8Array.from(atob(base64!), (letter) => letter.charCodeAt(0));
      const data = new DataTransfer();
      data.items.add(new File([bytes], file!, { type: 'image/jpeg' }));
      const form = document.querySelector('.observation-form')!;
      form.dispatchEvent(
        event === 'drop'
          ? new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true })
          : new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
      );
    },
    [how, name, picture.toString('base64')],
  );
}

describe('a picture of what was seen', () => {
  it.each(['drop', 'paste'] as const)(
    'comes by %s, and no copy that leaves the library says where',
    async (how) => {
      const page = await openNotebook(unit);
      await keepBlobs(page);
      await page.keyboard.press('Alt+o');
      await page.locator('[name=topic]').fill('clouding');
      await page.locator('[name=severity][value="2"]').check();
      const picture = await telephonePicture(page);
      expect(picture.indexOf(place)).toBeGreaterThan(0);
      await give(page, how, `${how}.jpg`, picture);
      const thumbnail = page.locator('.photo-place img');
      await thumbnail.waitFor();
      await expect
        .poll(() => thumbnail.evaluate((image: HTMLImageElement) => image.naturalWidth), patient)
        .toBe(64);
      await page.keyboard.press('Control+Enter');
      const entry = page.locator('.observation', { has: page.locator('img') }).last();
      await entry.locator('img').waitFor();
      const shown = Buffer.from(await lastBlob(page));
      expect(shown.subarray(0, 2)).toEqual(Buffer.from([0xff, 0xd8]));
      expect(shown.indexOf(place)).toBe(-1);
      const kept = (await unitOf(unit)).observations.at(-1);
      expect(kept).toMatchObject({ topic: 'clouding', photo: `${how}.jpg` });
    },
  );
});

/** A new run, waiting for its readings. */
async function beginRun(page: Page, mode: string): Promise<Locator> {
  await page.keyboard.press('Alt+b');
  await page.getByLabel('Picture mode').fill(mode);
  await page.getByRole('button', { name: 'Begin the run' }).click();
  const entry = page.locator('section.run', { hasText: `${mode}, ` }).first();
  await entry.locator('.bring').waitFor();
  return entry;
}

it('says so when a file is gone before it could be read', async () => {
  const page = await openNotebook(unit);
  const entry = await beginRun(page, 'Gone');
  await page.evaluate(() => {
    const hand = document.createElement('input');
    hand.type = 'file';
    hand.id = 'hand';
    document.body.append(hand);
  });
  const folder = mkdtempSync(join(tmpdir(), 'nitproof-stick-'));
  const file = join(folder, 'grey.csv');
  writeFileSync(file, 'series,stimulus,x,y,Y\ngreyscale,100,0.3127,0.3290,120\n');
  await page.locator('#hand').setInputFiles(file);
  rmSync(folder, { recursive: true });
  await entry.locator('.bring').evaluate((form) => {
    const data = new DataTransfer();
    data.items.add(document.querySelector<HTMLInputElement>('#hand')!.files![0]!);
    form.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
  });
  await entry.getByText('The file cannot be read any more.').waitFor();
});

describe('a file of a hundred thousand readings', () => {
  const csv = () => {
    const lines = ['series,stimulus,x,y,Y'];
    for (let row = 0; row < 100_000; row += 1)
      lines.push(
        `greyscale,${row % 101},0.${3100 + (row % 90)},0.3290,${(((row % 101) / 100) ** 2.2 * 120 + 0.05).toFixed(3)}`,
      );
    return { name: 'long.csv', mimeType: 'text/csv', buffer: Buffer.from(lines.join('\n')) };
  };

  it('shows how far it is, leaves nothing when stopped, and is in when it is let run', async () => {
    const page = await openNotebook(unit);
    const entry = await beginRun(page, 'Long');
    const id = (await entry.getAttribute('id'))!.replace(/^run-/, '');
    const picker = entry.locator('.bring input[type=file]');
    const readings = async () => (await unitOf(unit)).runs.find((each) => each.id === id)?.readings.length;

    await picker.setInputFiles(csv());
    const bar = entry.getByRole('progressbar');
    await bar.waitFor();
    await expect.poll(async () => Number(await bar.getAttribute('value')), patient).toBeGreaterThan(0);
    await entry.getByRole('button', { name: 'Stop; keep nothing of it' }).click();
    await entry.getByText('Stopped.').waitFor();
    expect(await readings()).toBe(0);

    await picker.setInputFiles(csv());
    // The text of the whole form, so that a failure says what stands there instead.
    await expect
      .poll(() => entry.locator('.bring').innerText(), { timeout: 90_000 })
      .toContain('100,000 readings');
    expect(await readings()).toBe(100_000);
    // The page answers while all of them are in it.
    await page.keyboard.press('Alt+o');
    await page.locator('.observation-form').waitFor({ timeout: 5000 });
  });
});
