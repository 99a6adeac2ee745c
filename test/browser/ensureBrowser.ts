import { spawnSync } from 'node:child_process';
import { findBrowser } from './browser.ts';

/** Browser tests need a Chromium: as root on a Debian it is installed, elsewhere the need is said. */
if (findBrowser() === null) {
  const isDebianRoot = process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0;
  if (isDebianRoot) {
    console.log('No Chromium on PATH; installing the package "chromium" for the browser tests.');
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'inherit' });
    spawnSync('apt-get', ['install', '-y', '-qq', 'chromium'], { stdio: 'inherit' });
  }
  if (findBrowser() === null) {
    console.error(
      'The browser tests need Chromium. Install it (Debian, Ubuntu: apt-get install chromium) and run again.',
    );
    process.exit(1);
  }
}
