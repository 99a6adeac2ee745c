import type { Page } from 'playwright-core';
import type { RequestReply } from '../../shared/contract/door.ts';
import type { Sitting } from './harness.ts';

/** For what comes from the backend or a worker while other tests take their share of the machine */
export const patient = { timeout: 20_000 };

/** A window on a unit's notebook page, with its protocol there. */
export async function openNotebook(sitting: Sitting, path: string, width = 1280): Promise<Page> {
  const page = await sitting.openWindow({ path: `#/bench/${path}`, width });
  await page.waitForSelector('.bench-name');
  return page;
}

/** What the library holds of a unit. */
export async function unitOf(sitting: Sitting, id: string): Promise<RequestReply<'unit.read'>> {
  const reply = await sitting.workbench.answer('unit.read', { unit: id });
  if (!reply.ok) throw new Error(reply.faults[0]?.sentence);
  return reply.value;
}
