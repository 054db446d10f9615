'use strict';
// Opens the pages of a running service in a real browser, looks at them as people do, and fails at anything that is not as it
// should be: an error, a breach of the page's own security policy, a request to another host.
//
//   NODE_PATH=<folder with playwright-core> node .ci/pages.cjs <service> <file with the host key> <scratch folder>
//
// PICTURES=<folder> keeps pictures of the pages there.

const assert = require('node:assert/strict');
const fs = require('node:fs');
const path = require('node:path');
const { chromium } = require('playwright-core');

const [service, hostKeyFile, scratch] = process.argv.slice(2);
const TOO_LONG_MILLIS = 60_000;
const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

async function registeredClub() {
  const answer = await fetch(`${service}/v1/clubs`, {
    method: 'POST',
    headers: {
      authorization: `Bearer ${fs.readFileSync(hostKeyFile, 'utf8').trim()}`,
      'content-type': 'application/json',
    },
    body: JSON.stringify({ id: 'e-0', club: 'saltmarsh', name: 'Saltmarsh Weavers', timeZone: 'Europe/Lisbon' }),
  });
  assert.equal(answer.status, 201);
  return (await answer.json()).accessKey;
}

/** A page that notes whatever should not happen. */
async function watched(browser, faults) {
  const page = await browser.newPage();
  page.setDefaultTimeout(TOO_LONG_MILLIS);
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`script: ${error.message}`));
  page.on('requestfailed', (request) => faults.push(`failed: ${request.url()}`));
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (!['data:', 'blob:'].includes(url.protocol) && url.origin !== service) faults.push(`elsewhere: ${url}`);
  });
  await page.exposeFunction('noteBreach', (breach) => faults.push(`policy: ${breach}`));
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) =>
      window.noteBreach(`${event.effectiveDirective} ${event.blockedURI} ${event.sample}`));
  });
  return page;
}

async function picture(page, name) {
  if (process.env.PICTURES) await page.screenshot({ path: path.join(process.env.PICTURES, `${name}.png`) });
}

async function listsEveryOperation(page) {
  const contract = await (await fetch(`${service}/openapi.yaml`)).text();
  const operations = [...contract.matchAll(/^ {6}operationId: (\w+)$/gm)].map((match) => match[1]).sort();
  await page.waitForFunction((count) => document.querySelectorAll('.opblock').length >= count, operations.length);
  const shown = await page.$$eval('.opblock', (blocks) => blocks.map((block) => block.id.split('-').pop()).sort());
  assert.deepEqual(shown, operations);
  return shown.length;
}

async function authorized(page, key) {
  await page.click('.auth-wrapper .btn.authorize');
  await page.fill('.modal-ux input', key);
  await page.click('.modal-ux .btn.authorize');
  await page.click('.modal-ux .btn-done');
}

/** Tries an operation out with its example, and gives the status and the body of the answer. */
async function tried(page, operation) {
  const block = page.locator(`.opblock[id$="-${operation}"]`);
  await block.locator('.opblock-summary-control').click();
  await block.locator('.try-out__btn').click();
  await block.locator('.btn.execute').click();
  const answer = block.locator('.live-responses-table tbody .response').first();
  await answer.waitFor();
  return {
    status: (await answer.locator('.response-col_status').innerText()).trim(),
    body: await answer.locator('.response-col_description').innerText(),
    block,
  };
}

async function fitsAPhone(page) {
  await page.setViewportSize({ width: 390, height: 844 });
  const [needed, given] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  assert.ok(needed <= given, `the page is ${needed} wide on a screen of ${given}`);
}

async function main() {
  const faults = [];
  const accessKey = await registeredClub();
  const browser = await chromium.launchPersistentContext(path.join(scratch, 'browser'), {
    executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
    headless: true,
    args: FLAGS,
    viewport: { width: 1280, height: 900 },
    timeout: TOO_LONG_MILLIS,
  });
  try {
    const page = await watched(browser, faults);
    const answer = await page.goto(`${service}/docs`);
    assert.equal(answer.status(), 200);
    const operations = await listsEveryOperation(page);
    await picture(page, 'docs-desktop');

    await authorized(page, accessKey);
    const made = await tried(page, 'registerDog');
    assert.equal(made.status, '201', made.body);
    const listed = await tried(page, 'listDogs');
    assert.equal(listed.status, '200', listed.body);
    assert.match(listed.body, /juniper/);
    await listed.block.scrollIntoViewIfNeeded();
    await picture(page, 'docs-desktop-tried');

    await fitsAPhone(page);
    await picture(page, 'docs-phone-tried');
    await page.evaluate(() => scrollTo(0, 0));
    await picture(page, 'docs-phone');

    assert.deepEqual(faults, []);
    console.log(`docs: ${operations} operations listed, two tried out, nothing asked elsewhere`);
  } finally {
    await browser.close();
  }
}

main().catch((error) => {
  console.error(error);
  process.exit(1);
});
