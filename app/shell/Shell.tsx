import { useEffect, useState } from 'react';
import { listenForCommands, registerCommands } from '../commands/registry.ts';
import { onRefused } from '../door/door.ts';
import { useLibrary } from '../stores/library.ts';
import { VerdictSymbols } from '../theme/VerdictGlyph.tsx';
import { TourLine } from '../tour/TourLine.tsx';
import { tourCommands } from '../tour/tourCommands.ts';
import { afterPaint } from './afterPaint.ts';
import { useBriefNotices } from './briefNotices.ts';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { Fetched, fetchedPart } from './Fetched.tsx';
import { FetchedSheet } from './FetchedSheet.tsx';
import { roomParts } from './roomParts.ts';
import { hashOf, roomNames, rooms, useRoute } from './route.ts';
import { ShutDoorPage, UnreadableLibraryPage } from './ShutDoorPage.tsx';
import { SlotContext } from './Slots.tsx';
import { useSheet } from './sheets.ts';
import { shellCommands } from './shellCommands.ts';
import { refuseStrayDrops } from './strayDrops.ts';

/** What lies over the window when it is asked for, each fetched apart. */
const palette = fetchedPart(async () => (await import('./Palette.tsx')).Palette);
const help = fetchedPart(async () => (await import('./HelpSheet.tsx')).HelpSheet);
const name = fetchedPart(async () => (await import('./NameSheet.tsx')).NameSheet);
const newArticle = fetchedPart(
  async () => (await import('../draft/panels/NewArticleSheet.tsx')).NewArticleSheet,
);
const notices = fetchedPart(async () => (await import('./BriefNotices.tsx')).BriefNotices);

/** Fetched once the first room is there, so that a sheet opens at a key; the palette first, into which one types at once. */
function fetchLater(): () => void {
  const stop = afterPaint(() => void palette.fetch());
  const timer = setTimeout(() => {
    for (const part of [help, name, newArticle, notices]) void part.fetch();
  }, 2000);
  return () => {
    stop();
    clearTimeout(timer);
  };
}

/** The window's frame: rooms at the left, the room on show, the status line. */
export function Shell() {
  const route = useRoute();
  const library = useLibrary();
  const sheet = useSheet((state) => state.sheet);
  const hasNotices = useBriefNotices((state) => state.begun);
  const [nav, setNav] = useState<HTMLElement | null>(null);
  const [status, setStatus] = useState<HTMLElement | null>(null);
  const [shut, setShut] = useState(false);
  /** In a narrow window the room's contents are folded away until they are asked for. */
  const [unfolded, setUnfolded] = useState(false);

  useEffect(() => {
    const stops = [
      onRefused(() => setShut(true)),
      registerCommands([...shellCommands, ...tourCommands]),
      listenForCommands(window),
      refuseStrayDrops(window),
      fetchLater(),
    ];
    return () => {
      for (const stop of stops) stop();
    };
  }, []);

  useEffect(() => {
    // Rooms put their contents here through a portal: React tells the room of a click, the page tells this element.
    const fold = ({ target }: Event) => {
      if ((target as Element).closest('a, button')) setUnfolded(false);
    };
    nav?.addEventListener('click', fold);
    return () => nav?.removeEventListener('click', fold);
  }, [nav]);

  useEffect(() => {
    document.title = `${roomNames[route.room]} · Nitproof`;
  }, [route.room]);

  if (shut) return <ShutDoorPage />;
  if (library.state === 'failed') return <UnreadableLibraryPage faults={library.faults} />;

  return (
    <SlotContext value={{ nav, status }}>
      <VerdictSymbols />
      <div className="window">
        <nav className="nav" aria-label="Rooms">
          <div className="nav-head">
            <b className="name">Nitproof</b>
            <button
              type="button"
              className="act nav-fold"
              aria-expanded={unfolded}
              aria-controls="nav-contents"
              onClick={() => setUnfolded(!unfolded)}
            >
              Contents
            </button>
          </div>
          <ul className="nav-rooms">
            {rooms.map((room) => (
              <li key={room}>
                <a href={hashOf(room)} aria-current={room === route.room ? 'page' : undefined}>
                  {roomNames[room]}
                </a>
              </li>
            ))}
          </ul>
          <div
            id="nav-contents"
            className={unfolded ? 'nav-contents unfolded' : 'nav-contents'}
            ref={setNav}
          />
        </nav>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a page of nothing but text is scrolled by keyboard too */}
        <main className="room" id="room" tabIndex={0}>
          <ErrorBoundary key={route.room} part={`The ${roomNames[route.room]}`}>
            <Fetched from={roomParts[route.room]} />
          </ErrorBoundary>
        </main>
        <TourLine />
        <footer className="status">
          <div className="status-slot" ref={setStatus} />
        </footer>
      </div>
      <div id="announcements" className="unseen" aria-live="polite" />
      {hasNotices ? <Fetched from={notices} /> : null}
      {sheet === 'palette' ? <FetchedSheet from={palette} /> : null}
      {sheet === 'name' ? <FetchedSheet from={name} /> : null}
      {sheet === 'help' ? <FetchedSheet from={help} /> : null}
      {sheet === 'new-article' ? <FetchedSheet from={newArticle} /> : null}
    </SlotContext>
  );
}
