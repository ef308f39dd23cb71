import { layByDragging, showAsTyped } from './sets-and-exhibits.ts';

/** How long after the last key a text is read, in milliseconds. */
const PAUSE = 250;

/** Says under a box how its text is read, while it is typed, by the parsers that read the file. */
function readAsTyped(form: HTMLFormElement): void {
  const token = form.querySelector<HTMLInputElement>('input[name="form-token"]')?.value ?? '';
  const waiting = new Map<string, ReturnType<typeof setTimeout>>();
  form.addEventListener('input', ({ target }) => {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement)) return;
    if ((target.dataset['reads'] ?? '') === '') return;
    clearTimeout(waiting.get(target.name));
    waiting.set(
      target.name,
      setTimeout(() => void say(target), PAUSE),
    );
  });

  async function say(box: HTMLInputElement | HTMLTextAreaElement): Promise<void> {
    const output = document.getElementById(`${box.name}-read`);
    if (output === null) return;
    const words = box.value;
    const valueOf = (name: string): string =>
      form.querySelector<HTMLSelectElement | HTMLInputElement>(`[name="${name}"]`)?.value ?? '';
    const body = new URLSearchParams({
      'form-token': token, field: box.name, words, scale: valueOf('grade-scale'), ruler: valueOf('ruler'),
      kind: form.dataset['kind'] ?? '',
    }); // prettier-ignore
    try {
      const answer = await fetch('/read', { method: 'POST', body });
      const read = (await answer.json()) as { readonly says: string; readonly ok: boolean };
      // Another key may have been pressed meanwhile: then another answer is on its way.
      if (box.value !== words) return;
      output.textContent = read.says;
      output.classList.toggle('slip', !read.ok);
    } catch {
      output.textContent = '';
    }
  }
}

/** How long after the last change the words of a form are kept as a draft, in milliseconds. */
const REST = 1000;

/** Keeps what is typed as a draft, and asks before a window with words that are kept nowhere is closed. */
function keepUnsaved(form: HTMLFormElement): void {
  let isChanged = false;
  let bell: ReturnType<typeof setTimeout> | undefined;
  const keep = async (): Promise<void> => {
    const body = new URLSearchParams({ 'draft-of': form.dataset['draft'] ?? '' });
    new FormData(form).forEach((value, name) => {
      if (typeof value === 'string') body.append(name, value);
    });
    const answer = await fetch('/draft', { method: 'POST', body }).catch(() => null);
    if (answer?.ok === true) isChanged = false;
  };
  const changed = (): void => {
    isChanged = true;
    clearTimeout(bell);
    if (form.dataset['draft'] !== undefined) bell = setTimeout(() => void keep(), REST);
  };
  form.addEventListener('input', changed);
  form.addEventListener('submit', () => {
    isChanged = false;
    clearTimeout(bell);
  });
  window.addEventListener('beforeunload', (event) => {
    if (isChanged) event.preventDefault();
  });
}

/** Asks for a part of the page again until it is done: a check or a build that goes on. */
function followProgress(part: HTMLElement): void {
  if (part.dataset['again'] !== 'yes') return;
  setTimeout(() => {
    void (async () => {
      const answer = await fetch(location.href).catch(() => null);
      if (answer?.ok !== true) return;
      const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
      const fresh = page.getElementById(part.id);
      if (fresh === null) return;
      part.replaceWith(fresh);
      followProgress(fresh);
    })();
  }, 1500);
}

/** Puts a box into the head of a table that chooses all its rows. */
function chooseAll(head: HTMLElement): void {
  const all = document.createElement('input');
  all.type = 'checkbox';
  all.setAttribute('aria-label', head.dataset['chooseAll'] ?? '');
  all.addEventListener('change', () => {
    for (const box of head.closest('table')?.querySelectorAll<HTMLInputElement>('td > input[type=checkbox]') ?? [])
      box.checked = all.checked;
  });
  head.replaceChildren(all);
}

for (const part of document.querySelectorAll<HTMLElement>('[data-again]')) followProgress(part);
for (const head of document.querySelectorAll<HTMLElement>('[data-choose-all]')) chooseAll(head);
for (const form of document.querySelectorAll('form')) {
  if (form.dataset['shows'] !== undefined) showAsTyped(form);
  if (form.method !== 'post' || form.querySelector('[data-reads]') === null) continue;
  readAsTyped(form);
  keepUnsaved(form);
}
for (const exhibit of document.querySelectorAll<HTMLElement>('[data-exhibit]')) layByDragging(exhibit);
for (const photograph of document.querySelectorAll<HTMLElement>('[data-crop]')) cropByDragging(photograph);

type Part = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** Lets the box round a piece be dragged on its photograph; what was dragged is written into its field, in hundredths. */
export function cropByDragging(holder: HTMLElement): void {
  const field = document.getElementById(holder.dataset['crop'] ?? '');
  const img = holder.querySelector('img');
  if (img === null) return;
  const box = document.createElement('div');
  box.className = 'crop-box';
  holder.append(box);
  const draw = ({ left, top, width, height }: Part, isFound: boolean): void => {
    box.classList.toggle('found', isFound);
    Object.assign(box.style, { left: `${left}%`, top: `${top}%`, width: `${width}%`, height: `${height}%` });
  };
  const show = (): void => {
    const said = field instanceof HTMLInputElement ? field.value : '';
    const part = partOf(said, img) ?? partOf(holder.dataset['found'] ?? '', img);
    box.hidden = part === null;
    if (part !== null) draw(part, said.trim() === '');
  };
  if (img.complete) show();
  else img.addEventListener('load', show);
  if (!(field instanceof HTMLInputElement)) return;
  field.addEventListener('input', show);
  let from: { readonly x: number; readonly y: number } | null = null;
  const at = (event: PointerEvent): { readonly x: number; readonly y: number } => {
    const { left, top, width, height } = img.getBoundingClientRect();
    const share = (part: number, of: number): number => Math.min(100, Math.max(0, (part / of) * 100));
    return { x: share(event.clientX - left, width), y: share(event.clientY - top, height) };
  };
  holder.addEventListener('pointerdown', (event) => {
    from = at(event);
    holder.setPointerCapture(event.pointerId);
  });
  holder.addEventListener('pointermove', (event) => {
    if (from === null) return;
    const to = at(event);
    const tidy = (figure: number): string => String(Math.round(figure * 10) / 10);
    const figures = [Math.min(from.x, to.x), Math.min(from.y, to.y), Math.abs(to.x - from.x), Math.abs(to.y - from.y)];
    field.value = `${figures.map(tidy).join(' ')} %`;
    show();
  });
  holder.addEventListener('pointerup', () => (from = null));
}

/** A box in hundredths of a photograph; null where the words are none. Pixels are those of the file, which may be larger than what is shown. */
function partOf(words: string, img: HTMLImageElement): Part | null {
  const [left = NaN, top = NaN, width = NaN, height = NaN] = words.split(/[ ,]+/).map(Number.parseFloat);
  if (![left, top, width, height].every(Number.isFinite) || width <= 0 || height <= 0) return null;
  if (words.trim().endsWith('%')) return { left, top, width, height };
  const [wide, high] = [Number(img.dataset['wide'] ?? NaN), Number(img.dataset['high'] ?? NaN)];
  if (!Number.isFinite(wide) || !Number.isFinite(high)) return null;
  return {
    left: (left / wide) * 100,
    top: (top / high) * 100,
    width: (width / wide) * 100,
    height: (height / high) * 100,
  };
}
