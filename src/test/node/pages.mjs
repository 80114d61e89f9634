// node pages.mjs FOLDER CHROMIUM: opens each HTML page of a folder in Chromium, without a network.
// Prints one line of JSON a page: violations of axe, addresses asked for, widths that overflow.
// Prints each page to PDF beside it.
import {createRequire} from 'node:module';
import {readdirSync, readFileSync} from 'node:fs';
import {join, resolve} from 'node:path';
import {pathToFileURL} from 'node:url';

const require = createRequire(join(process.cwd(), 'package.json'));
const {chromium} = require('playwright-core');
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const [folder, executablePath] = process.argv.slice(2);

// 400 px is a telephone; 640 px of two dots each is a window of 1280 px at 200 % zoom.
const narrow = [
  {width: 400, height: 800},
  {width: 640, height: 512, scale: 2},
];

const browser = await chromium.launch({executablePath, args: ['--no-sandbox']});
for (const name of readdirSync(folder).filter(f => f.endsWith('.html')).sort()) {
  const address = pathToFileURL(resolve(folder, name)).href;
  const asked = [];
  const open = async ({width, height, scale = 1}) => {
    const context = await browser.newContext({viewport: {width, height}, deviceScaleFactor: scale});
    await context.route('**', route => {
      const url = route.request().url();
      if (url === address || url.startsWith('data:')) return route.continue();
      asked.push(url);
      return route.abort();
    });
    const page = await context.newPage();
    await page.goto(address);
    return page;
  };
  const overflowing = [];
  for (const size of narrow) {
    const page = await open(size);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    if (wide > size.width) overflowing.push(`${wide} px at ${size.width} px`);
    await page.context().close();
  }
  const page = await open({width: 1200, height: 900});
  await page.evaluate(axe);
  const found = await page.evaluate(() => axe.run({resultTypes: ['violations']}));
  const violations = found.violations.map(
    v => `${v.id}, ${v.nodes.length} times: ${v.nodes[0].html.slice(0, 200)}`);
  const passed = found.passes.length;
  await page.pdf({path: join(folder, name.replace('.html', '.printed.pdf')), preferCSSPageSize: true});
  await page.context().close();
  console.log(JSON.stringify({name, violations, asked, overflowing, passed}));
}
await browser.close();
