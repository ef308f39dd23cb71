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
