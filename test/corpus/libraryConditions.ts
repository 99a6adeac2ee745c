import { bt709, bt2020, generator, spectroradiometer } from '../../main/demo/story.ts';

const bench = { room_lux: 0.1, warm_up_min: 60, source: generator, instrument: spectroradiometer } as const;
/** What every SDR run of the corpus has in common */
export const sdr = { signal: 'SDR', target: bt709, sample: 'A', ...bench } as const;
/** What every HDR run of the corpus has in common */
export const hdr = { signal: 'HDR10', target: bt2020, dimming: 'as-set', sample: 'A', ...bench } as const;
