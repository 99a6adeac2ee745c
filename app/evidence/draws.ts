import { createDrawsShop, type DrawsSource } from './drawsShop.ts';

/** Draws are made in a worker, so that typing never waits for them: one for the window, whatever article is open. */
const shop = createDrawsShop(
  () => new Worker(new URL('./drawsWorker.ts', import.meta.url), { type: 'module' }),
);

export function openDraws(arrived: () => void): DrawsSource {
  return shop.open(arrived);
}
