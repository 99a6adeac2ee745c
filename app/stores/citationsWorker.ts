import { createMeasurer } from '../../shared/certainty/index.ts';
import { type CitationsReply, type CitationsRequest, findingsOf } from './articleFindings.ts';

const measurer = createMeasurer();

/** Judges every article off the window's thread, and hands each over as soon as it is done. */
self.onmessage = ({ data }: MessageEvent<CitationsRequest>) => {
  const post = (reply: CitationsReply) => self.postMessage(reply);
  for (const document of data.documents) {
    post({ type: 'article', findings: findingsOf(document, data, measurer) });
  }
  post({ type: 'done' });
};
