// The system's own Chromium, driven by Playwright; nothing is downloaded.
import { chromium } from 'playwright-core';

export function launch() {
  return chromium.launch({
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
  });
}
