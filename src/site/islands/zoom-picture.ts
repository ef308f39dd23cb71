import { zoomWords } from '../words/zoom.ts';
import { brought, moved, numberedEvery, wholeView } from './zoom/view.ts';
import type { Extent, Point, View } from './zoom/view.ts';

const MIDDLE: Point = { x: 0, y: 0 };
/** How much nearer a press or a tap brings it, and how far an arrow moves it in pixels. */
const STEP = { nearer: 1.5, tap: 2, move: 60 } as const;
/** How many numbers a rule has: it is cut off where the glass ends. */
const NUMBERS = 60;

/**
 * Opens the link to a photograph in a dialog on the same page, where it can be brought nearer and moved about. Without
 * it the link leads to the picture itself. The largest picture is fetched when it is asked for, not before.
 */
class LookCloser extends HTMLElement {
  #picture: Extent = { width: 1, height: 1 };
  #view: View = { zoom: 1, x: 0, y: 0 };
  /** Millimetres across the picture; 0 where no size is known. */
  #across = 0;
  #news = '';
  #link: HTMLAnchorElement | null = null;
  /** The link that it was opened by. */
  #opener: HTMLAnchorElement | null = null;

  connectedCallback(): void {
    const dialog = this.querySelector('dialog');
    const glass = this.#part('glass');
    if (dialog === null) return;
    // A picture without an address is none in a page; it comes with the first that is looked at.
    glass.append(new Image());
    document.addEventListener('click', (event) => {
      if (event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
      const link = linkMeant(event.target);
      if (link === null) return;
      event.preventDefault();
      dialog.showModal();
      this.#opener = link;
      this.#look(link);
      glass.focus();
    });
    const numbers = this.querySelector('ol');
    numbers?.append(...Array.from({ length: NUMBERS }, () => document.createElement('li')));
    this.#on('nearer', () => this.#bring(STEP.nearer));
    this.#on('farther', () => this.#bring(1 / STEP.nearer));
    this.#on('whole', () => this.#fit());
    this.#on('close', () => dialog.close());
    this.#on('other', () => {
      const other = otherThan(this.#link);
      if (other !== null) this.#look(other);
    });
    dialog.addEventListener('close', () => this.#opener?.focus());
    dialog.addEventListener('keydown', (event) => this.#press(event));
    followPointer(glass, {
      move: (by) => this.#show(moved(this.#view, by, this.#glass, this.#picture)),
      bring: (times, at) => this.#bring(times, at, false),
      tap: (at) => {
        this.#bring(STEP.tap, at);
        this.#show(moved(this.#view, { x: -at.x, y: -at.y }, this.#glass, this.#picture), true);
      },
    });
    new ResizeObserver(() => {
      if (dialog.open) this.#bring(1, MIDDLE, false);
    }).observe(glass);
    document.documentElement.classList.add('closer-opens');
  }

  #part(name: string): HTMLElement {
    return this.querySelector<HTMLElement>(`[data-part="${name}"]`) ?? document.createElement('div');
  }

  #on(name: string, act: () => void): void {
    this.#part(name).addEventListener('click', act);
  }

  get #glass(): Extent {
    const { clientWidth, clientHeight } = this.#part('glass');
    return { width: Math.max(1, clientWidth), height: Math.max(1, clientHeight) };
  }

  /** Lays the picture that a link leads to under the glass; until it has come, the one that the page shows. */
  #look(link: HTMLAnchorElement): void {
    const shown = document.querySelector<HTMLImageElement>(`[data-face="${link.dataset['look'] ?? ''}"] img`);
    const picture = this.querySelector('img');
    if (shown === null || picture === null) return;
    this.#link = link;
    this.#across = Number(link.dataset['millimetres'] ?? 0);
    this.#picture = { width: Number(shown.getAttribute('width')), height: Number(shown.getAttribute('height')) };
    picture.width = this.#picture.width;
    picture.height = this.#picture.height;
    picture.alt = shown.alt;
    picture.src = shown.currentSrc === '' ? link.href : shown.currentSrc;
    this.#part('name').textContent = link.dataset['name'] ?? '';
    this.#part('rule').hidden = this.#across === 0;
    const other = otherThan(link);
    this.#part('other').hidden = other === null;
    this.#part('other').textContent = other?.textContent.trim() ?? '';
    this.#fit();
    void this.#fetch(link, picture);
  }

  async #fetch(link: HTMLAnchorElement, picture: HTMLImageElement): Promise<void> {
    const { fetching = '', missing = '' } = this.dataset;
    this.#tell(fetching);
    const largest = new Image();
    largest.src = link.href;
    const come = await largest.decode().then(
      () => true,
      () => false,
    );
    if (this.#link !== link) return;
    if (come) picture.src = link.href;
    this.#tell(come ? '' : missing);
  }

  #press(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const { key } = event;
    if (key === '+' || key === '=') this.#bring(STEP.nearer);
    else if (key === '-' || key === '−') this.#bring(1 / STEP.nearer);
    else if (key === '0') this.#fit();
    else if (key === 'ArrowLeft') this.#step({ x: STEP.move, y: 0 });
    else if (key === 'ArrowRight') this.#step({ x: -STEP.move, y: 0 });
    else if (key === 'ArrowUp') this.#step({ x: 0, y: STEP.move });
    else if (key === 'ArrowDown') this.#step({ x: 0, y: -STEP.move });
    else return;
    event.preventDefault();
  }

  #step(by: Point): void {
    this.#show(moved(this.#view, by, this.#glass, this.#picture), true);
  }

  #bring(times: number, at = MIDDLE, gently = true): void {
    this.#show(brought(this.#view, times, at, this.#glass, this.#picture), gently);
  }

  #fit(): void {
    this.#show(wholeView(this.#glass, this.#picture));
  }

  #show(view: View, gently = false): void {
    this.#view = view;
    const picture = this.querySelector('img');
    picture?.classList.toggle('gently', gently);
    picture?.style.setProperty(
      'transform',
      `translate(-50%, -50%) translate(${view.x}px, ${view.y}px) scale(${view.zoom})`,
    );
    const millimetre = this.#across === 0 ? 0 : (this.#picture.width * view.zoom) / this.#across;
    const rule = this.#part('rule');
    const every = numberedEvery(millimetre);
    rule.style.setProperty('--millimetre', `${millimetre}px`);
    rule.style.setProperty('--every', String(every));
    const marks = Array.from(
      { length: NUMBERS * every },
      (_, at) => `M${at * millimetre} 0v${at % every === 0 ? 12 : 6}`,
    );
    this.querySelector('path')?.setAttribute('d', millimetre === 0 ? '' : marks.join(''));
    for (const [at, mark] of [...rule.querySelectorAll('li')].entries())
      mark.textContent = at === 0 ? `0 ${rule.dataset['unit'] ?? ''}` : String(at * every);
    this.#tell(this.#news);
  }

  /** Says how the fetching goes; otherwise how much the view holds and, past two pixels of the screen for one of the picture's, that no more is to be seen. */
  #tell(news: string): void {
    this.#news = news;
    const isAtItsFinest = this.#view.zoom * devicePixelRatio > 2;
    const wide = this.#across === 0 ? 0 : (this.#glass.width * this.#across) / (this.#picture.width * this.#view.zoom);
    const scale = [isAtItsFinest ? (this.dataset['finest'] ?? '') : '', wide === 0 ? '' : zoomWords.wide(wide)];
    const said = news === '' ? scale.filter((part) => part !== '').join(' ') : news;
    const says = this.#part('says');
    if (says.textContent !== said) says.textContent = said;
  }
}

/** The link to a photograph that was pressed, or whose own picture on the page was. */
function linkMeant(pressed: EventTarget | null): HTMLAnchorElement | null {
  if (!(pressed instanceof Element)) return null;
  const link = pressed.closest<HTMLAnchorElement>('a[data-look]');
  if (link !== null) return link;
  const caption =
    pressed instanceof HTMLImageElement
      ? pressed.closest('figure[data-face]')?.querySelector('figcaption:not([hidden])')
      : null;
  if (!(caption instanceof HTMLElement)) return null;
  return document.querySelector<HTMLAnchorElement>(`a[data-look="${CSS.escape(caption.dataset['of'] ?? '')}"]`);
}

/** From the obverse to the reverse and back; null from an edge or a detail. */
function otherThan(link: HTMLAnchorElement | null): HTMLAnchorElement | null {
  const look = link?.dataset['look'];
  const other = look === 'obverse' ? 'reverse' : look === 'reverse' ? 'obverse' : '';
  return document.querySelector<HTMLAnchorElement>(`a[data-look="${other}"]`);
}

/** What hands do to a picture under a glass. Points are measured from the middle of the glass. */
type PointerGestures = {
  readonly move: (by: Point) => void;
  /** So many times nearer, about a point. */
  readonly bring: (times: number, at: Point) => void;
  readonly tap: (at: Point) => void;
};

/** Less than this, in pixels, and a hand has not moved but tapped. */
const STILL = 6;

/** Hears a mouse, a pen, fingers and a wheel over the glass. */
function followPointer(glass: HTMLElement, { move, bring, tap }: PointerGestures): void {
  const down = new Map<number, Point>();
  let wandered = 0;

  const fromMiddle = ({ x, y }: Point): Point => {
    const { left, top, width, height } = glass.getBoundingClientRect();
    return { x: x - left - width / 2, y: y - top - height / 2 };
  };
  glass.addEventListener('pointerdown', (event) => {
    if (event.button !== 0 || down.size === 2) return;
    glass.setPointerCapture(event.pointerId);
    wandered = down.size === 0 ? 0 : STILL;
    down.set(event.pointerId, { x: event.clientX, y: event.clientY });
    glass.classList.add('grasped');
  });
  glass.addEventListener('pointermove', (event) => {
    const before = down.get(event.pointerId);
    if (before === undefined) return;
    const now = { x: event.clientX, y: event.clientY };
    const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
    down.set(event.pointerId, now);
    wandered += distance(before, now);
    if (other === undefined) {
      move(between(before, now));
      return;
    }
    const middle = half(before, other);
    bring(distance(now, other) / Math.max(1, distance(before, other)), fromMiddle(middle));
    move(between(middle, half(now, other)));
  });
  const lift = (event: PointerEvent): void => {
    if (!down.delete(event.pointerId) || down.size > 0) return;
    glass.classList.remove('grasped');
    if (event.type === 'pointerup' && wandered < STILL) tap(fromMiddle({ x: event.clientX, y: event.clientY }));
  };
  glass.addEventListener('pointerup', lift);
  glass.addEventListener('pointercancel', lift);
  glass.addEventListener(
    'wheel',
    (event) => {
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_PIXEL ? event.deltaY : event.deltaY * 30;
      // Two fingers on a pad are told as a wheel with Ctrl, in small steps.
      bring(Math.exp(-lines * (event.ctrlKey ? 0.01 : 0.002)), fromMiddle({ x: event.clientX, y: event.clientY }));
    },
    { passive: false },
  );
}

const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
const half = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
const between = (from: Point, to: Point): Point => ({ x: to.x - from.x, y: to.y - from.y });

customElements.define('look-closer', LookCloser);
