import { describe, expect, it, vi } from 'vitest';
import type { DrawsReply, DrawsRequest } from '../../../app/evidence/drawsRequest.ts';
import { createDrawsShop, type DrawsMaker } from '../../../app/evidence/drawsShop.ts';
import type { RunEvidence, UnitEvidence } from '../../../shared/contract/evidence.ts';
import type { QuantityDraws } from '../../../shared/contract/measurement.ts';
import { benchOf } from '../../fixtures/hearth/index.ts';

const unit = [...benchOf().evidence.units.values()][0]!;
const run = unit.runs[0]!;

/** A worker that answers when told to, and the shop that it works for. */
function begin(limitBytes?: number) {
  const sent: DrawsRequest[] = [];
  const makers: DrawsMaker[] = [];
  const shop = createDrawsShop(() => {
    const maker: DrawsMaker = { onmessage: null, postMessage: (message) => sent.push(message) };
    makers.push(maker);
    return maker;
  }, limitBytes);
  const asked = () => sent.flatMap((message) => (message.type === 'draw' ? [message.quantity] : []));
  const reply = (quantity: string, draws: DrawsReply['draws']) => {
    const { ticket } = sent.findLast(
      (message) => message.type === 'draw' && message.quantity === quantity,
    ) as {
      ticket: string;
    };
    makers[0]!.onmessage!({ data: { ticket, draws } } as MessageEvent<DrawsReply>);
  };
  return { shop, sent, makers, asked, reply };
}

const drawsOf = (bytes: number) => ({ values: new Float64Array(bytes / 8) }) as unknown as QuantityDraws;
const nextTask = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('the draws of a window', () => {
  it('are made by one worker for one article after another, and known to the next at once', async () => {
    const { shop, makers, asked, reply } = begin();
    const arrived = vi.fn();
    const first = shop.open(arrived);
    expect(makers).toEqual([]);
    expect([first.draws(unit, run, 'peak'), first.draws(unit, run, 'peak')]).toEqual(['pending', 'pending']);
    const draws = drawsOf(80);
    reply('peak', draws);
    await nextTask();
    expect(arrived).toHaveBeenCalledTimes(1);
    first.close();

    const second = shop.open(arrived);
    expect(second.draws(unit, run, 'peak')).toBe(draws);
    expect(second.draws(unit, run, 'black')).toBe('pending');
    expect([makers.length, asked()]).toEqual([1, ['peak', 'black']]);
  });

  it('are not made for an article that was left, unless another waits for them too', async () => {
    const { shop, sent, reply } = begin();
    const [told, alsoTold] = [vi.fn(), vi.fn()];
    const left = shop.open(told);
    const stays = shop.open(alsoTold);
    left.draws(unit, run, 'peak');
    left.draws(unit, run, 'black');
    stays.draws(unit, run, 'black');
    left.close();
    const tickets = sent.flatMap((message) => (message.type === 'draw' ? [message.ticket] : []));
    expect(sent.at(-1)).toEqual({ type: 'drop', tickets: [tickets[0]] });
    reply('black', null);
    await nextTask();
    expect([told, alsoTold].map((spy) => spy.mock.calls.length)).toEqual([0, 1]);
    expect(stays.draws(unit, run, 'black')).toBeNull();
  });

  it('beyond the limit are let go once no open article uses them, the oldest first', () => {
    const { shop, reply } = begin(800);
    const first = shop.open(() => undefined);
    const second = shop.open(() => undefined);
    first.draws(unit, run, 'peak');
    reply('peak', drawsOf(400));
    first.draws(unit, run, 'black');
    reply('black', drawsOf(400));
    second.draws(unit, run, 'white');
    reply('white', drawsOf(400));
    second.draws(unit, run, 'peak');
    first.close();
    expect(second.draws(unit, run, 'peak')).not.toBe('pending');
    expect(second.draws(unit, run, 'white')).not.toBe('pending');
    expect(second.draws(unit, run, 'black')).toBe('pending');
  });

  it('are asked for anew where the run had gone when its turn came, and for a set that is of another kind', () => {
    const { shop, asked, reply } = begin();
    const source = shop.open(() => undefined);
    source.draws(unit, run, 'peak');
    reply('peak', 'gone');
    expect(source.draws(unit, run, 'peak')).toBe('pending');
    reply('peak', drawsOf(8));
    const other = { ...unit, unit: { ...unit.unit, panel: 'emissive' } } as unknown as UnitEvidence;
    expect(source.draws(other, run as RunEvidence, 'peak')).toBe('pending');
    expect(asked()).toEqual(['peak', 'peak', 'peak']);
  });
});
