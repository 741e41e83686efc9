// Looks at pages of the built site as people do: 390 and 1280 px wide, light and dark, by keyboard, on paper.
// node measure.mjs SITE [--shots FOLDER] [--report FILE] [page ...]
// Fails on a serious or critical finding of axe-core, a page that scrolls sideways, a formula that is cut, a missing language or skip link,
// a theme button that the keyboard does not reach, a median page above 1.2 MB.
import { createServer } from 'node:http'
import { readFile, mkdir, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { extname, join, normalize } from 'node:path'
import { chromium } from 'playwright-core'

const PAGES = [
  'index.html', 'tutorial.html', 'howto/index.html', 'howto/long-run.html', 'howto/hot-bundle.html', 'howto/existing-wiring.html', 'howto/engine-bay.html',
  'chart.html', 'models/heat-balance.html', 'models/bundle.html', 'models/short-circuit.html', 'tables.html', 'performance.html', 'safety.html',
  'api/LowVoltage.Calc.CircuitDesigner.html',
]
const WIDTHS = [390, 1280], THEMES = ['light', 'dark'], LIMIT = 1.2e6
const TYPES = { '.html': 'text/html', '.css': 'text/css', '.js': 'text/javascript', '.json': 'application/json', '.svg': 'image/svg+xml', '.png': 'image/png', '.woff2': 'font/woff2', '.woff': 'font/woff' }

const [site, ...rest] = process.argv.slice(2)
let shots, report
const wanted = []
while (rest.length) {
  const word = rest.shift()
  if (word === '--shots') shots = rest.shift()
  else if (word === '--report') report = rest.shift()
  else wanted.push(word)
}
const pages = wanted.length ? wanted : PAGES

const server = createServer(async (request, response) => {
  const path = normalize(decodeURIComponent(new URL(request.url, 'http://localhost').pathname))
  try {
    const body = await readFile(join(site, path.endsWith('/') ? path + 'index.html' : path))
    response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'application/octet-stream', 'cache-control': 'no-store' })
    response.end(body)
  } catch {
    response.writeHead(404)
    response.end()
  }
}).listen(0, '127.0.0.1')
await new Promise(resolve => server.once('listening', resolve))
const root = `http://127.0.0.1:${server.address().port}/`
const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ['--no-sandbox'] })
if (shots) await mkdir(shots, { recursive: true })

const wrong = [], weights = [], rules = {}
let views = 0
for (const name of pages) {
  for (const width of WIDTHS) {
    for (const theme of THEMES) {
      views++
      const context = await browser.newContext({ viewport: { width, height: width < 600 ? 844 : 900 }, colorScheme: theme, reducedMotion: 'reduce' })
      const page = await context.newPage()
      const loads = []
      page.on('response', answer => loads.push(answer.body().then(body => ({ url: answer.url().slice(root.length), bytes: body.length }), () => ({ url: answer.url().slice(root.length), bytes: 0 }))))
      await page.goto(root + name, { waitUntil: 'networkidle' })
      await page.waitForTimeout(150)
      const here = `${name} ${width} ${theme}`
      if (width === 1280 && theme === 'light') {
        const all = await Promise.all(loads)
        weights.push({ name, bytes: all.reduce((sum, load) => sum + load.bytes, 0), largest: all.sort((a, b) => b.bytes - a.bytes).slice(0, 4) })
      }

      await page.evaluate(axe)
      const look = () => page.evaluate(() => globalThis.axe.run(document, { resultTypes: ['violations'] }))
      const found = await look().catch(() => page.waitForTimeout(1000).then(look)) // the page may still be drawing its table of contents
      for (const violation of found.violations.filter(one => one.impact === 'serious' || one.impact === 'critical')) {
        rules[violation.id] = (rules[violation.id] ?? 0) + violation.nodes.length
        wrong.push(`${here}: ${violation.id} (${violation.impact}), ${violation.nodes.length} places, first ${violation.nodes[0].target.join(' ')} ${violation.nodes[0].any.map(one => one.message).join('; ').slice(0, 160)}`)
      }
      wrong.push(...(await page.evaluate(seen)).map(text => `${here}: ${text}`))
      if (width === 1280 && theme === 'light' && !await reachesTheme(page)) wrong.push(`${here}: the keyboard does not reach the theme button`)
      if (shots) {
        await page.evaluate(() => { document.activeElement?.blur(); scrollTo(0, 0) })
        await page.screenshot({ path: join(shots, `${name.replaceAll('/', '_').replace('.html', '')}-${width}-${theme}.png`), fullPage: true })
        if (width === 1280 && theme === 'light') await page.pdf({ path: join(shots, `${name.replaceAll('/', '_').replace('.html', '')}.pdf`), format: 'A4' })
      }
      await context.close()
    }
  }
}
await browser.close()
server.close()

const sizes = weights.map(one => one.bytes).sort((a, b) => a - b)
const median = sizes[Math.floor((sizes.length - 1) / 2)]
if (!(median <= LIMIT)) wrong.push(`the median page weighs ${median} bytes`)
const places = Object.values(rules).reduce((a, b) => a + b, 0)
const summary = `${pages.length} pages, ${views} views: ${places} serious or critical places of axe-core, ${wrong.length} lines below; median page ${(median / 1e6).toFixed(2)} MB, largest ${(sizes.at(-1) / 1e6).toFixed(2)} MB`
if (report) await writeFile(report, JSON.stringify({ summary, rules, weights, wrong }, null, 1))
for (const line of wrong) console.log(line)
console.log(JSON.stringify(rules))
console.log(summary)
process.exit(wrong.length ? 1 : 0)

/** What axe-core has no rule for, or none that is serious; runs in the page. */
function seen() {
  const wrong = [], wide = document.documentElement.clientWidth
  if (!document.documentElement.lang) wrong.push('no language')
  const skip = document.querySelector('a[href="#content"]')
  if (!skip || document.querySelector('a[href], button, input') !== skip || !document.getElementById('content')) wrong.push('no skip link')
  if (document.documentElement.scrollWidth > wide + 1) {
    const cause = [...document.querySelectorAll('article *')].find(one => one.getBoundingClientRect().right > wide + 1)
    wrong.push(`scrolls sideways by ${document.documentElement.scrollWidth - wide} px ${cause ? cause.tagName + ' ' + cause.textContent.slice(0, 40) : ''}`)
  }
  for (const formula of document.querySelectorAll('article math, article mjx-container')) {
    let box = formula
    while (box && box.tagName !== 'ARTICLE' && !['auto', 'scroll', 'hidden', 'clip'].includes(getComputedStyle(box).overflowX)) box = box.parentElement
    const right = Math.min(wide, box ? box.getBoundingClientRect().right : wide), last = formula.getBoundingClientRect().right
    if (last > right + 1 || (box && box !== document.querySelector('article') && !box.querySelector('table') && box.scrollWidth > box.clientWidth + 1)) wrong.push(`a formula is cut: ${formula.textContent.slice(0, 60)}`)
  }
  const tables = [...document.querySelectorAll('article table')].map(one => one.closest('.table-responsive') ?? one).filter(one => one.scrollWidth > one.clientWidth + 1)
  for (const table of tables) wrong.push(`a table is wider than the page by ${table.scrollWidth - table.clientWidth} px: ${table.textContent.trim().slice(0, 40).replace(/\s+/g, ' ')}`)
  return wrong
}

/** Whether the tab key gets to the theme button and Enter opens its menu. */
async function reachesTheme(page) {
  await page.evaluate(() => { document.activeElement?.blur(); scrollTo(0, 0) })
  for (let press = 0; press < 40; press++) {
    await page.keyboard.press('Tab')
    if (await page.evaluate(() => document.activeElement?.matches('a[title="Change theme"]') === true)) {
      await page.keyboard.press('Enter')
      const opens = await page.evaluate(() => document.activeElement.closest('.dropdown').querySelector('.dropdown-menu.show') !== null)
      await page.keyboard.press('Escape')
      return opens
    }
  }
  return false
}
