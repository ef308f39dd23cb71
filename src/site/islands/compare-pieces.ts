import { fittingScale } from './compare/fitting-scale.ts';
import type { ComparedPiece, ComparedFile } from '../compare/record.ts';
import {
  FACES,
  formatCompare,
  LAYINGS,
  MOST,
  otherWay,
  parseCompare,
  roundedLie,
  STRAIGHT,
  isId,
} from '../compare/state.ts';
import type { CompareState } from '../compare/state.ts';
import { compareWords as words } from '../words/compare.ts';
import { hearAdding } from './compare/add-piece.ts';
import { showAt } from './compare/lay-face.ts';
import { layFacts } from './compare/lay-facts.ts';
import { OneOverOther } from './compare/lay-over.ts';
import { layPiece } from './compare/lay-piece.ts';
import { readJson } from './read-json.ts';

type Held = { readonly piece: ComparedPiece; readonly from: string };
const STEP = 1.25;
/** How long a face must lie still, in milliseconds, before the address says how it lies. */
const WRITTEN_AFTER = 300;
/** What the words of a piece take in a row at least, and what lies between two pieces, in rem: as ComparedTemplates and CompareSheet have them. */
const LABEL = 7.25;
const GAP = 1.5;
/** A board so many pixels wide has room for both faces of two pieces in one row. */
const WIDE = 640;

/** Lays the pieces that the address names side by side, at one scale, with their facts; what is changed goes back into the address. */
class ComparePieces extends HTMLElement {
  #state: CompareState = parseCompare('');
  #held: readonly Held[] = [];
  /** How much larger than as fits. */
  #larger = 1;
  #turn = 0;
  #over: OneOverOther | null = null;
  #writing: ReturnType<typeof setTimeout> | undefined;
  readonly #title = document.title;

  connectedCallback(): void {
    hearAdding(this.#part('add'), this.#records, (id) => this.#change({ pieces: [...this.#state.pieces, id] }));
    this.#over = new OneOverOther(this.#part('over'), {
      swap: () => {
        const { pieces, lie } = this.#state;
        this.#change({ pieces: [...pieces.slice(0, 2).reverse(), ...pieces.slice(2)], lie: otherWay(lie) });
      },
      next: () => {
        const [lower, ...others] = this.#state.pieces;
        if (lower === undefined) return;
        this.#change({ pieces: [lower, ...others.slice(1), ...others.slice(0, 1)], lie: STRAIGHT });
      },
      moved: (lie) => {
        this.#state = { ...this.#state, lie: roundedLie(lie) };
        clearTimeout(this.#writing);
        // Once it lies still: a browser lets an address be written only so often.
        this.#writing = setTimeout(() => history.replaceState(null, '', this.#address), WRITTEN_AFTER);
      },
    });
    const laying = this.#part('laying');
    laying.addEventListener('change', () => {
      const chosen = [...laying.querySelectorAll<HTMLInputElement>('input:checked')].map(({ value }) => value);
      this.#change({
        faces: FACES.find((faces) => chosen.includes(faces)) ?? this.#state.faces,
        laid: LAYINGS.find((laid) => chosen.includes(laid)) ?? this.#state.laid,
        turned: chosen.includes('yes'),
      });
    });
    this.#part('larger').addEventListener('click', () => this.#resize(this.#larger * STEP));
    this.#part('smaller').addEventListener('click', () => this.#resize(this.#larger / STEP));
    this.#part('fit').addEventListener('click', () => this.#resize(1));
    addEventListener('popstate', () => void this.#restore());
    addEventListener('resize', () => this.#resize(this.#larger));
    void this.#restore();
  }

  /** The file of what can be added, in full; the files of single pieces are found from where it lies. */
  get #records(): string {
    return new URL(this.dataset['records'] ?? '', document.baseURI).href;
  }

  #part(name: string): HTMLElement {
    return this.querySelector<HTMLElement>(`[data-part="${name}"]`) ?? document.createElement('div');
  }

  #change(change: Partial<CompareState>): void {
    this.#state = { ...this.#state, ...change };
    clearTimeout(this.#writing);
    history.pushState(null, '', this.#address);
    void this.#restore();
  }

  get #address(): string {
    return `${location.pathname}${formatCompare(this.#state)}`;
  }

  /** Lays what the address asks for. */
  async #restore(): Promise<void> {
    const turn = (this.#turn += 1);
    const asked = parseCompare(location.search);
    const way = new URL(this.dataset['way'] ?? '', this.#records).href;
    const few = asked.pieces.slice(0, MOST);
    const answers = await Promise.all(few.map(async (id) => ({ id, answer: await fetchCompared(id, way) })));
    if (turn !== this.#turn) return;
    const came = answers.flatMap(({ answer }) => (answer.came === 'piece' ? [answer] : []));
    this.#held = came.filter(({ piece }, at) => came.findIndex((other) => other.piece.id === piece.id) === at);
    this.#state = { ...asked, pieces: this.#held.map(({ piece }) => piece.id) };
    const missing = answers.flatMap(({ id, answer }) => (answer.came === 'nothing' ? [id] : []));
    this.#part('says').textContent = [
      this.#held.length === 0 ? words.nothing : words.lies(this.#held.length),
      ...(missing.length === 0 ? [] : [words.missing(missing)]),
      ...(answers.some(({ answer }) => answer.came === 'no answer') ? [words.unfetched] : []),
      ...(asked.pieces.length > MOST ? [words.tooMany(MOST)] : []),
    ].join(' ');
    this.#lay();
  }

  #lay(): void {
    const { faces, turned } = this.#state;
    const isOver = this.#state.laid === 'over' && this.#held.length > 1;
    this.#part('board').hidden = this.#held.length === 0;
    this.#part('facts').hidden = this.#held.length === 0;
    this.#part('laying').hidden = this.#held.length === 0;
    this.#part('row').hidden = isOver;
    this.#part('over').hidden = !isOver;
    this.#part('next').hidden = this.#held.length < 3;
    this.#part('turning').hidden = isOver || faces === 'obverse';
    for (const field of this.#part('laying').querySelectorAll('input')) {
      field.checked = field.type === 'checkbox' ? turned : field.value === faces || field.value === this.#state.laid;
      if (field.value === 'over') field.disabled = this.#held.length < 2;
      if (field.value === 'both') field.disabled = isOver;
      if (isOver && field.value === 'obverse') field.checked = faces !== 'reverse';
    }
    document.title = [...this.#held.map(({ piece }) => piece.title), this.#title].join(' · ');
    if (isOver) this.#part('laid').replaceChildren();
    else this.#layBeside();
    this.#layFacts();
    this.#resize(this.#larger);
  }

  #layBeside(): void {
    const forms = { piece: this.#template('piece'), face: this.#template('face') };
    const focused = document.activeElement?.getAttribute('aria-label') ?? '';
    const last = this.#held.length - 1;
    const laid = this.#held.flatMap(({ piece, from }, at) => {
      const hands = { move: (step: number) => this.#move(at, step), takeAway: () => this.#takeAway(at) };
      const line = layPiece(piece, from, this.#state, forms, hands);
      line?.querySelector('[data-move="-1"]')?.toggleAttribute('disabled', at === 0);
      line?.querySelector('[data-move="1"]')?.toggleAttribute('disabled', at === last);
      return line ?? [];
    });
    this.#part('laid').replaceChildren(...laid);
    // What was pressed is laid anew; whoever pressed it stands where they stood.
    if (focused === '') return;
    const again = [...this.#part('laid').querySelectorAll('button')].find((one) => one.ariaLabel === focused);
    if (again?.disabled === false) again.focus();
    else again?.parentElement?.querySelector<HTMLButtonElement>('button:not([disabled])')?.focus();
  }

  #move(at: number, step: number): void {
    const pieces = [...this.#state.pieces];
    pieces.splice(at + step, 0, ...pieces.splice(at, 1));
    this.#change({ pieces });
  }

  #takeAway(at: number): void {
    this.#change({ pieces: this.#state.pieces.filter((_, place) => place !== at) });
    this.querySelector<HTMLInputElement>('[data-part="add"] input')?.focus();
  }

  #layFacts(): void {
    this.#part('alike-name').textContent = this.#held.length > 1 ? words.alike : words.facts;
    layFacts(
      { differs: this.#part('differs'), partly: this.#part('partly'), alike: this.#part('alike') },
      this.#held.map(({ piece }) => piece),
    );
  }

  /** Lays everything so many times larger than as fits; a picture is fetched as large as it is shown. */
  #resize(larger: number): void {
    this.#larger = Math.min(Math.max(larger, 0.4), 6);
    const isOver = this.#state.laid === 'over' && this.#held.length > 1;
    const inRow = this.#state.faces === 'both' && this.#held.length <= 2 && this.#room >= WIDE;
    this.#part('laid').classList.toggle('in-row', inRow);
    const widths = this.#held.map(({ piece: { faces } }) =>
      inRow
        ? faces.obverse.millimetres + faces.reverse.millimetres
        : Math.max(faces.obverse.millimetres, faces.reverse.millimetres),
    );
    const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    const [first, second] = this.#held;
    const fits = isOver
      ? Math.min(26, this.#room / (Math.max(...widths.slice(0, 2)) * 1.06))
      : fittingScale(widths, this.#room, LABEL * rem, GAP * rem);
    const scale = fits * this.#larger;
    this.#part('board').style.setProperty('--laid-scale', `${scale}px`);
    if (isOver && first !== undefined && second !== undefined) {
      const face = this.#state.faces === 'reverse' ? 'reverse' : 'obverse';
      const [lower, upper] = [first, second].map(({ piece, from }) => ({
        face: piece.faces[face],
        from,
        title: piece.title,
      }));
      this.#part('facts').style.removeProperty('--columns');
      if (lower !== undefined && upper !== undefined)
        this.#over?.lay(lower, upper, this.#state.lie, this.#template('face'), scale);
      return;
    }
    this.#part('facts').style.setProperty('--columns', this.#columns);
    for (const line of this.#part('laid').children) {
      const soft = [...line.querySelectorAll('.face')].map((face) => showAt(face, scale)).includes(true);
      line.querySelector('[data-soft]')?.toggleAttribute('hidden', !soft);
    }
  }

  /** The columns of the facts: each begins where its piece does, as long as all of them are on the screen. */
  get #columns(): string {
    const begins = [...this.#part('laid').children].map((line) => line.getBoundingClientRect().left);
    const row = this.#part('row');
    if (row.scrollWidth > row.clientWidth) return '';
    return [...begins.slice(1).map((left, at) => `${left - (begins[at] ?? left)}px`), 'minmax(7rem, 1fr)'].join(' ');
  }

  /** Pixels across the board, between its margins. */
  get #room(): number {
    const sheet = this.#part('row').parentElement;
    if (sheet === null) return 0;
    const { paddingInlineStart, paddingInlineEnd } = getComputedStyle(sheet);
    return sheet.clientWidth - Number.parseFloat(paddingInlineStart) - Number.parseFloat(paddingInlineEnd);
  }

  #template(name: string): HTMLTemplateElement {
    return (
      this.querySelector<HTMLTemplateElement>(`template[data-part="${name}"]`) ?? document.createElement('template')
    );
  }
}

/** What came of asking for a piece; addresses in it are meant from the file it came in. */
export type Asked =
  | { readonly came: 'piece'; readonly piece: ComparedPiece; readonly from: string }
  | { readonly came: 'nothing' | 'no answer' };

const held = new Map<string, Promise<Asked>>();

/** Asks for a piece by its id, once; `way` leads to the file of a piece, whose id takes the place of the star. */
function fetchCompared(id: string, way: string): Promise<Asked> {
  if (!isId(id)) return Promise.resolve({ came: 'nothing' });
  const from = way.replace('*', id);
  const known = held.get(id);
  if (known !== undefined) return known;
  const asked = ask(from).then((answer) => {
    // What did not come for want of a connection may come another time.
    if (answer.came === 'no answer') held.delete(id);
    return answer;
  });
  held.set(id, asked);
  return asked;
}

async function ask(from: string): Promise<Asked> {
  try {
    return { came: 'piece', piece: ((await readJson(from)) as ComparedFile).compared, from };
  } catch (error) {
    // From a folder there is no telling why a file does not come; it lies there or it does not.
    const isMissing = location.protocol === 'file:' || (error instanceof Error && error.message === '404');
    return { came: isMissing ? 'nothing' : 'no answer' };
  }
}

// Last of all: a piece that the address names is asked for as soon as the element is known.
customElements.define('compare-pieces', ComparePieces);
