// What the pages add to DocFX's own script: the theme button for the keyboard, scrollers that take the focus, a button to copy code.

/** DocFX draws the theme button as a link without a target, which no tab key reaches. */
function reachThemeButton() {
  for (const link of document.querySelectorAll('header a.dropdown-toggle:not([href]):not([role])')) {
    link.setAttribute('role', 'button')
    link.setAttribute('aria-label', link.title)
    link.tabIndex = 0
    link.addEventListener('keydown', event => {
      if (event.key === 'Enter' || event.key === ' ') {
        event.preventDefault()
        link.click()
      }
    })
  }
}

/** What scrolls must take the focus, so that the arrow keys move it; what does not scroll must not. */
function focusScrollers() {
  for (const box of document.querySelectorAll('article pre, article pre > code, article .table-responsive, article table')) {
    const scrolls = box.scrollWidth > box.clientWidth + 1 && getComputedStyle(box).overflowX !== 'visible'
    if (scrolls) {
      box.tabIndex = 0
      if (box.tagName === 'TABLE') continue
      box.setAttribute('role', 'region')
      box.setAttribute('aria-label', box.dataset.name ?? (box.querySelector('table') ? 'table' : 'code'))
    } else if (box.getAttribute('tabindex') === '0') {
      box.removeAttribute('tabindex')
      box.removeAttribute('role')
    }
  }
}

function addCopyButtons() {
  for (const code of document.querySelectorAll('article pre.code:not(.with-copy)')) {
    code.classList.add('with-copy')
    const frame = document.createElement('div'), button = document.createElement('button')
    frame.className = 'code-frame'
    button.type = 'button'
    button.className = 'copy d-print-none'
    button.textContent = 'Copy'
    button.addEventListener('click', async () => {
      await navigator.clipboard.writeText(code.textContent)
      button.textContent = 'Copied'
      setTimeout(() => { button.textContent = 'Copy' }, 1500)
    })
    code.replaceWith(frame)
    frame.append(button, code)
  }
}

function tend() {
  reachThemeButton()
  focusScrollers()
}

addCopyButtons()
tend()
// What is folded away on the screen is on the paper.
addEventListener('beforeprint', () => document.querySelectorAll('article details').forEach(fold => { fold.open = true }))
addEventListener('resize', focusScrollers)
new MutationObserver(tend).observe(document.body, { childList: true, subtree: true })

export default {}
