import { useEffect } from 'react';
import { Toaster, toast } from 'sonner';
import { useNotices } from './notices.ts';

/** The sentences in the corner, each for six seconds. */
export function Notices() {
  const waiting = useNotices((state) => state.waiting);
  useEffect(() => {
    if (waiting.length === 0) return;
    for (const { sentence, kind } of waiting) (kind === 'fault' ? toast.error : toast)(sentence);
    useNotices.setState({ waiting: [] });
  }, [waiting]);
  return <Toaster position="bottom-right" offset={44} duration={6000} gap={8} />;
}
