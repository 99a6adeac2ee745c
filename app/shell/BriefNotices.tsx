import { useEffect } from 'react';
import { Toaster, toast } from 'sonner';
import { useBriefNotices } from './briefNotices.ts';

/** The sentences in the corner, each for six seconds. */
export function BriefNotices() {
  const waiting = useBriefNotices((state) => state.waiting);
  useEffect(() => {
    if (waiting.length === 0) return;
    for (const { sentence, kind } of waiting) (kind === 'fault' ? toast.error : toast)(sentence);
    useBriefNotices.setState({ waiting: [] });
  }, [waiting]);
  return <Toaster position="bottom-right" offset={44} duration={6000} gap={8} />;
}
