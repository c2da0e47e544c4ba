// The system's own Chromium, driven by Playwright; nothing is downloaded.
import { chromium } from 'playwright-core';

const options = {
  executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
  args: [
    '--no-sandbox', // the tests may run as root, and the only pages opened are our own
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};

export function launch() {
  return chromium.launch(options);
}

// A browser that keeps what it is given in a folder, for the next one.
export function launchIn(folder) {
  return chromium.launchPersistentContext(folder, options);
}
