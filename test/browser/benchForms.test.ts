import { describe, expect, it } from 'vitest';
import { patient, sitAtTheBench } from './benchWindow.ts';
import { goTo, proofsAtRest } from './rooms.ts';

const { openNotebook, unitOf } = sitAtTheBench();

const unit = 'orrinvale-hearth-55';
const run = 'sdr-calm-delivered-firmware-3-2';
const vane = 'kasulind-vane-50';

describe('the forms of the Bench', () => {
  it('change an instrument: claims are judged again, and the history keeps what stood there', async () => {
    const page = await openNotebook(unit);
    await goTo(page, '#/draft/hearth-55');
    await proofsAtRest(page);
    const white = page.locator('.proof', { hasText: /118\.\d\s*±/ }).first();
    const before = await white.innerText();
    await goTo(page, `#/bench/${unit}/${run}`);
    const entry = page.locator(`#run-${run}`);
    await entry.getByRole('button', { name: /^Change the instrument/ }).click();
    const form = entry.getByRole('form');
    const uncertainty = form.getByLabel('U of luminance, %');
    await expect
      .poll(() => uncertainty.evaluate((field) => field === document.activeElement), patient)
      .toBe(true);
    await uncertainty.fill('6,5');
    await page.keyboard.press('Enter');
    expect(await form.getByRole('alert').innerText()).toMatch(/^Write the expanded uncertainty/);
    expect(await uncertainty.getAttribute('aria-invalid')).toBe('true');
    await uncertainty.fill('6.5');
    await form.getByLabel('Drift check').fill('0.3 % over the sitting');
    await form.getByLabel(/^Say the same of the instrument in the \d other runs/).check();
    await page.keyboard.press('Enter');
    await entry.getByText(/luminance ±6\.5.%, .*drift check: 0\.3 % over the sitting/).waitFor();
    await entry.getByText('History', { exact: true }).click();
    await entry
      .getByText(/changed\. Before: reference spectroradiometer, no\. 0007, luminance ±2.%/)
      .waitFor();

    const { runs } = await unitOf(unit);
    const named = runs.filter(({ conditions }) => conditions.instrument?.serial === '0007');
    expect(named.length).toBeGreaterThan(3);
    expect(new Set(named.map(({ conditions }) => conditions.instrument?.u_luminance_percent))).toEqual(
      new Set([6.5]),
    );
    const other = runs.find(({ conditions }) => conditions.instrument?.serial === '0001');
    expect(other?.conditions.instrument?.u_luminance_percent).toBe(2);
    expect(runs.find(({ id }) => id === run)?.conditions.settings).toMatchObject({ brightness: 50 });

    await goTo(page, '#/draft/hearth-55');
    await proofsAtRest(page);
    await expect
      .poll(
        () =>
          page
            .locator('.proof', { hasText: /118(\.\d)?\s*±/ })
            .first()
            .innerText(),
        { timeout: 60_000 },
      )
      .not.toBe(before);
  });

  it('hand the settings of the mode on to another run of it, and to no other mode', async () => {
    const page = await openNotebook(vane);
    const before = (await unitOf(vane)).runs;
    const begin = async (mode: string, stage: string) => {
      await page.getByRole('button', { name: 'Begin another run' }).click();
      const form = page.getByRole('form', { name: 'Begin a run' });
      await form.getByText(/^Settings/).waitFor();
      await form.getByLabel('Picture mode').fill(mode);
      await form.getByLabel('Stage').selectOption(stage);
      await form.getByRole('button', { name: 'Begin the run' }).click();
      await expect.poll(() => form.count(), patient).toBe(0);
    };
    const newest = [...before].sort((a, b) =>
      (b.conditions.taken ?? '').localeCompare(a.conditions.taken ?? ''),
    )[0]!.conditions;
    expect(Object.keys(newest.settings ?? {})).not.toEqual([]);
    await begin(newest.mode, newest.stage);
    await begin('Parlour', newest.stage);
    const old = new Set(before.map(({ id }) => id));
    const added = (await unitOf(vane)).runs.filter(({ id }) => !old.has(id));
    expect(Object.fromEntries(added.map(({ conditions }) => [conditions.mode, conditions.settings]))).toEqual(
      { [newest.mode]: newest.settings, Parlour: undefined },
    );
  });

  it('begin a run from a step that is out of date: its conditions, its place and its cautions come along', async () => {
    const page = await openNotebook(unit);
    await page.getByRole('button', { name: /^Begin a run: White windows/ }).click();
    const form = page.getByRole('form', { name: 'Begin a run' });
    expect(await form.getByRole('note').innerText()).toMatch(/leave an image.*strains the eyes/s);
    expect(await form.getByLabel('Picture mode').inputValue()).toBe('HDR Calm');
    expect(await form.locator('[name=firmware]').inputValue()).toBe('3.2.0');
    await form.getByLabel('Warmed up for, minutes').fill('10');
    expect(await form.getByRole('status').innerText()).toMatch(/asks for 45 minutes/);
    await form.getByLabel('Target EOTF').fill('steep');
    await form.getByRole('button', { name: 'Begin the run' }).click();
    expect(await form.getByRole('alert').innerText()).toMatch(/^Write BT\.1886, PQ/);
    await form.getByLabel('Target EOTF').fill('PQ');
    await form.getByRole('button', { name: 'Begin the run' }).click();
    await page.locator('#run-hdr10-hdr-calm-delivered .bring').waitFor();
    const begun = (await unitOf(unit)).runs.find(({ id }) => id === 'hdr10-hdr-calm-delivered');
    expect(begun?.conditions).toMatchObject({
      supersedes: 'hdr-calm-delivered',
      firmware: '3.2.0',
      warm_up_min: 10,
      instrument: { serial: '0007' },
      taken: expect.stringMatching(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:00[+-]\d{2}:\d{2}$/),
    });
  });

  it('put a set right by keyboard alone, say below a field what to write, and leave by Esc', async () => {
    const page = await openNotebook('orrinvale-kiln-55');
    await page.getByRole('button', { name: 'Change', exact: true }).first().focus();
    await page.keyboard.press('Enter');
    const form = page.getByRole('form', { name: 'Change the set’s particulars' });
    await page.keyboard.press('Control+a');
    await page.keyboard.type('about 900');
    await page.keyboard.press('Enter');
    expect(await form.getByRole('alert').innerText()).toMatch(/^Write the amount alone/);
    await page.keyboard.press('Control+a');
    await page.keyboard.type('1,299.90');
    await page.keyboard.press('Enter');
    await page
      .getByText(/£1,299\.90/)
      .first()
      .waitFor();
    const { price, facts } = (await unitOf('orrinvale-kiln-55')).unit;
    expect(price).toMatchObject({ amount: 1299.9, currency: 'GBP' });
    expect(Object.keys(facts ?? {}).length).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Change', exact: true }).first().press('Enter');
    await form.waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => form.count(), patient).toBe(0);
  });

  it('ask for a maker before a set is logged', async () => {
    const page = await openNotebook('new');
    await page.getByRole('button', { name: 'Log it' }).click();
    expect(await page.getByRole('alert').innerText()).toBe('Say who made the set.');
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('name')), patient)
      .toBe('maker');
  });
});

describe('the protocol', () => {
  it('finds a dirty screen that was noted in other spelling', async () => {
    const page = await openNotebook('kasulind-vane-50');
    const step = page.locator('.step', { hasText: 'dirty screen' });
    const topics = (await unitOf('kasulind-vane-50')).observations.map(({ topic }) => topic);
    const isNoted = topics.some((topic) => /^dirty[ -]screen$/i.test(topic));
    expect(await step.getAttribute('class')).toContain(isNoted ? 'step-done' : 'step-missing');
    const hearth = await openNotebook(unit);
    await hearth.locator('.step-done', { hasText: 'dirty screen' }).waitFor();
  });

  it('stands in two columns without a hole in a wide window, with no count broken over two lines', async () => {
    const page = await openNotebook(unit, { width: 1920 });
    await page.locator('.step').first().waitFor();
    const { columns, tallest, right, groups } = await page.evaluate(() => {
      const list = document.querySelector('.protocol-groups')!;
      const boxes = [...list.children].map((group) => group.getBoundingClientRect());
      return {
        columns: new Set(boxes.map(({ left }) => Math.round(left))).size,
        groups: boxes.length,
        right: list.getBoundingClientRect().right - Math.max(...boxes.map((box) => box.right)),
        tallest: Math.max(
          ...[...document.querySelectorAll('.step-found')].map(
            (found) =>
              found.getBoundingClientRect().height / Number.parseFloat(getComputedStyle(found).lineHeight),
          ),
        ),
      };
    });
    expect([columns, groups]).toEqual([2, 2]);
    expect(right).toBeLessThan(2);
    expect(tallest).toBeLessThan(2.5);
  });
});
