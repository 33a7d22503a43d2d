"""What every screen must keep: no accessibility violation, no sideways scrolling, large targets, stillness if asked."""

from pathlib import Path
from typing import Any

from playwright.sync_api import Page

AXE = Path(__file__).parents[2] / "frontend/node_modules/axe-core/axe.min.js"
_RUN_AXE = """async () => {
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const found = await axe.run(document, { runOnly: { type: 'tag', values: tags } });
  return found.violations.map((one) => `${one.id} (${one.impact}): ${one.nodes[0].html.slice(0, 160)}`);
}"""
# Not innerWidth: on a phone the layout grows with what overflows it.
_TOO_WIDE = "() => document.documentElement.scrollWidth - Math.min(innerWidth, screen.width)"
_SMALL = """(least) => [...document.querySelectorAll(
    'a[href]:not(p a, li a, td a, th a), button, select, input:not([type=hidden])')]
  .map((one) => [one, (one.closest('label') ?? one).getBoundingClientRect()])
  .filter(([one, box]) => box.width && one.checkVisibility() && (box.height < least || box.width < Math.min(least, 44)))
  .map(([one, box]) => `${one.outerHTML.slice(0, 90)} is ${Math.round(box.width)} x ${Math.round(box.height)}`)"""
_MOVING = """() => matchMedia('(prefers-reduced-motion: reduce)').matches
  && document.getAnimations().some((one) => one.playState === 'running')"""


def violations(page: Page) -> list[str]:
    """Answer what axe finds on the page as it stands."""
    page.evaluate(AXE.read_text())
    found: list[str] = page.evaluate(_RUN_AXE)
    return found


def faults(page: Page, least_target_px: int) -> list[str]:
    """Answer everything that is wrong with the page as it stands."""
    found = violations(page)
    wide = page.evaluate(_TOO_WIDE)
    if wide > 0:
        found.append(f"scrolls sideways by {wide} px")
    found += [f"small target: {one}" for one in page.evaluate(_SMALL, least_target_px)]
    if page.evaluate(_MOVING):
        found.append("moves although reduced motion is asked for")
    return found


def walk_by_tab(page: Page, most: int = 60) -> list[dict[str, Any]]:
    """Press Tab through the page; answer what takes the focus, and whether it can be seen."""
    seen: list[dict[str, Any]] = []
    for _ in range(most):
        page.keyboard.press("Tab")
        spot = page.evaluate(_FOCUS)
        if spot is None or any(spot["path"] == one["path"] for one in seen):
            break
        seen.append(spot)
    return seen


_FOCUS = """() => {
  const one = document.activeElement;
  if (!one || one === document.body) return null;
  const path = [];
  for (let at = one; at.parentElement; at = at.parentElement) path.unshift([...at.parentElement.children].indexOf(at));
  const box = (one.closest('label') ?? one).getBoundingClientRect();
  const spots = [[.5, .5], [.2, .5], [.8, .5]].map(([x, y]) =>
    document.elementFromPoint(box.left + box.width * x, box.top + box.height * y));
  const target = one.closest('label') ?? one;
  const covered = spots.every((spot) => !spot || !(target.contains(spot) || spot.contains(target)));
  const style = getComputedStyle(one), outer = getComputedStyle(target);
  const shape = one.querySelector('.shape');
  const ring = shape
    ? parseFloat(getComputedStyle(shape).strokeWidth) >= 3
    : [style, outer].some((s) => s.outlineStyle !== 'none' || s.boxShadow !== 'none');
  const name = one.textContent.trim().slice(0, 40) || one.getAttribute('aria-label');
  return { path: path.join('.'), name, covered, ring };
}"""
