import type { ArticleDocument } from '../../shared/contract/door.ts';
import type { Result } from '../../shared/contract/fault.ts';
import { door } from '../door/door.ts';

let ahead: { id: string; reply: Promise<Result<ArticleDocument>> } | null = null;

const ask = (id: string): Promise<Result<ArticleDocument>> => door.ask('article.read', { article: id });

/** Asks for an article before the room that will show it is there. */
export function askForArticle(id: string): void {
  ahead = { id, reply: ask(id) };
}

/** The article as the library holds it; what was asked for ahead is handed out once, to whoever opens it first. */
export function readArticle(id: string): Promise<Result<ArticleDocument>> {
  const reply = ahead?.id === id ? ahead.reply : ask(id);
  ahead = null;
  return reply;
}
