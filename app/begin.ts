import './theme/fonts.css';
import './theme/tokens.css';
import './theme/base.css';
import './shell/shell.css';
import { roomParts } from './shell/roomParts.ts';
import { parseRoute } from './shell/route.ts';
import { askForArticle } from './stores/articleAhead.ts';
import { useEvidence } from './stores/evidence.ts';
import { useLibrary } from './stores/library.ts';
import { followNews } from './stores/news.ts';

/*
 * What the window begins with: everything that the first room needs is asked for at once, the library's lists, the
 * frame and the room's own program, so that none waits for another. News first, so that no change is missed; the
 * common styles first, so that a room's own stand above them.
 */
followNews();
const { room, path } = parseRoute(window.location.hash);
void useLibrary.getState().load();
if (room === 'draft' && path[0]) askForArticle(path[0]);
void useEvidence.getState().load();
void import('./main.tsx');
void roomParts[room].fetch();
