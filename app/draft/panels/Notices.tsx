import { useArticle } from '../../stores/article.ts';
import { currentSession } from '../currentSession.ts';

const timeText = (at: string) =>
  new Date(at).toLocaleString('en-GB', { day: 'numeric', month: 'long', hour: '2-digit', minute: '2-digit' });

/** What a person must know or decide about the keeping of the text; nothing here most of the time. */
export function Notices() {
  const save = useArticle((state) => state.save);
  const following = useArticle((state) => state.following);
  const restored = useArticle((state) => state.restored);
  const lost = useArticle((state) => state.verdicts?.lost.length ?? 0);
  const session = currentSession();
  if (save.kind === 'overtaken') {
    return (
      <div className="notice" role="alert">
        <span>
          This article was saved elsewhere while you were writing. Nothing of yours or theirs is lost yet.
        </span>
        <button type="button" className="act" onClick={() => void session?.saveOver()}>
          Keep my text
        </button>
        <button type="button" className="act" onClick={() => void session?.reload()}>
          Take the saved text
        </button>
        <button
          type="button"
          className="act"
          onClick={async () => {
            await navigator.clipboard.writeText(session?.markdown() ?? '');
            await session?.reload();
          }}
        >
          Copy mine, then take the saved text
        </button>
      </div>
    );
  }
  if (save.kind === 'refused') {
    return (
      <div className="notice" role="alert">
        <span>Not saved: {save.sentence} Your text is kept on this machine and saving is tried again.</span>
        <button type="button" className="act" onClick={() => void session?.flush()}>
          Try now
        </button>
      </div>
    );
  }
  if (restored) {
    return (
      <div className="notice" role="status">
        <span>
          Text that was not saved when the window closed is back, as of {timeText(restored.at)}.
          {following ? ' It is saved once the other window that holds this article has closed.' : ''}
        </span>
        <button type="button" className="act" onClick={() => useArticle.setState({ restored: null })}>
          Keep it
        </button>
        <button type="button" className="act" onClick={() => session?.showMarkdown(restored.savedMarkdown)}>
          Use the saved text instead
        </button>
      </div>
    );
  }
  if (lost > 0 && !following) {
    return (
      <div className="notice" role="status">
        <span>
          {lost === 1
            ? 'One accepted proof has lost its words'
            : `${lost} accepted proofs have lost their words`}{' '}
          in edits made elsewhere.
        </span>
        <button type="button" className="act" onClick={() => session?.letLostGo()}>
          Let {lost === 1 ? 'it' : 'them'} go
        </button>
      </div>
    );
  }
  if (following) {
    return (
      <div className="notice" role="status">
        <span>
          Another window is writing this article; this one follows it. It can write again once the other
          closes it.
        </span>
      </div>
    );
  }
  return null;
}
