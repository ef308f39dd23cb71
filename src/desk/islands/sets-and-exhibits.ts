/** How long after the last change is asked, in milliseconds. */
const PAUSE = 400;

/** Shows beside a form what comes of it while it is typed: the ticket of a piece, the places of a rule. */
export function showAsTyped(form: HTMLFormElement): void {
  const shown = document.getElementById(form.dataset['shows'] ?? '');
  if (shown === null) return;
  let bell: ReturnType<typeof setTimeout> | undefined;
  let asked = 0;
  const ask = async (): Promise<void> => {
    asked += 1;
    const mine = asked;
    const body = new URLSearchParams();
    new FormData(form).forEach((value, name) => {
      if (typeof value === 'string') body.append(name, value);
    });
    const answer = await fetch(form.dataset['asks'] ?? '', { method: 'POST', body }).catch(() => null);
    if (answer === null || !answer.ok || mine !== asked) return;
    const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
    shown.replaceChildren(...page.body.childNodes);
  };
  const soon = (): void => {
    clearTimeout(bell);
    bell = setTimeout(() => void ask(), PAUSE);
  };
  form.addEventListener('input', soon);
  form.addEventListener('change', soon);
}

/** Lets pieces of an exhibit be dragged; where they are dropped they are moved as the buttons move them. */
export function layByDragging(exhibit: HTMLElement): void {
  let dragged: HTMLElement | null = null;
  const clear = (): void => {
    for (const one of exhibit.querySelectorAll('.before, .over')) one.classList.remove('before', 'over');
  };
  exhibit.addEventListener('dragstart', (event) => {
    dragged = (event.target as HTMLElement).closest<HTMLElement>('li[data-at]');
    dragged?.classList.add('dragged');
    event.dataTransfer?.setData('text/plain', dragged?.dataset['at'] ?? '');
  });
  exhibit.addEventListener('dragend', () => {
    dragged?.classList.remove('dragged');
    dragged = null;
    clear();
  });
  exhibit.addEventListener('dragover', (event) => {
    const target = placeUnder(event);
    if (dragged === null || target === null) return;
    event.preventDefault();
    clear();
    (target.before ?? target.list).classList.add(target.before === null ? 'over' : 'before');
  });
  exhibit.addEventListener('drop', (event) => {
    const target = placeUnder(event);
    if (dragged === null || target === null) return;
    event.preventDefault();
    const count = target.list.querySelectorAll('li').length;
    const to = target.before?.dataset['at'] ?? `${target.list.dataset['group'] ?? ''}.${count}`;
    const form = dragged.querySelector('form');
    if (form === null) return;
    const add = (name: string, value: string): void => {
      const box = document.createElement('input');
      [box.type, box.name, box.value] = ['hidden', name, value];
      form.append(box);
    };
    add('to', to);
    add('do', 'move');
    form.submit();
  });
}

/** The list under the pointer, and the piece before which something dropped there would come; null for its end. */
function placeUnder(event: DragEvent): { readonly list: HTMLElement; readonly before: HTMLElement | null } | null {
  const target = event.target as HTMLElement;
  const list = target.closest<HTMLElement>('[data-group]');
  if (list === null) return null;
  const over = target.closest<HTMLElement>('li[data-at]');
  if (over === null) return { list, before: null };
  const box = over.getBoundingClientRect();
  const isLower = event.clientY > box.top + box.height / 2;
  const next = over.nextElementSibling;
  return { list, before: isLower ? (next instanceof HTMLElement ? next : null) : over };
}
