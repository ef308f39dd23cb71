import { finderOf } from '../../find/choose.ts';
import type { Finder, Found } from '../../find/choose.ts';
import type { PackedRecords } from '../../find/pack.ts';
import { fold } from '../../find/fold.ts';
import type { ShownRecord } from '../../find/record.ts';
import { parseState } from '../../find/state.ts';
import { compareWords as words } from '../../words/compare.ts';
import { findWords } from '../../words/find.ts';
import { readJson } from '../read-json.ts';

/** As many answers as are read before another word is typed; a piece of the number asked for is looked for among more. */
const FEW = 8;
const AMONG = 100;

/** Lets a visitor find a listed piece by its number or words of it; `records` names the file of what can be found. */
export function hearAdding(place: HTMLElement, records: string, add: (id: string) => void): void {
  const field = place.querySelector('input');
  const answers = place.querySelector('[data-part="answers"]');
  const says = place.querySelector('[data-part="answers-say"]');
  if (field === null || answers === null || says === null) return;
  let loading: Promise<Finder> | null = null;
  const load = async (): Promise<Finder> => finderOf((await readJson(records)) as PackedRecords, null, () => null);

  const answer = async (): Promise<void> => {
    const asked = field.value;
    if (asked.trim() === '') {
      answers.replaceChildren();
      says.textContent = '';
      return;
    }
    try {
      loading ??= load();
      const { matching, similar, first } = (await loading)({ ...parseState(''), words: asked.trim() });
      if (asked !== field.value) return;
      const all = matching === 0 ? similar : matching;
      says.textContent = all > FEW ? words.first(FEW, all) : words.answers(all);
      const offers = numberFirst(first(AMONG), asked).slice(0, FEW);
      answers.replaceChildren(...offers.map((record) => offered(record, () => take(record.id))));
    } catch {
      loading = null;
      says.textContent = words.unfetched;
    }
  };
  const take = (id: string): void => {
    field.value = '';
    answers.replaceChildren();
    says.textContent = '';
    field.focus();
    add(id);
  };
  field.addEventListener('input', () => void answer());
  field.addEventListener('keydown', ({ key }) => {
    if (key !== 'Enter') return;
    // The first answer is the piece of that number, where there is one.
    void answer().then(() => answers.querySelector('button')?.click());
  });
  place.hidden = false;
}

/** What was found, a piece whose number was asked for before all others. */
function numberFirst(found: readonly Found[], asked: string): readonly ShownRecord[] {
  const records = found.map(({ record }) => record);
  const isNumber = ({ number }: ShownRecord): boolean => fold(number) === fold(asked.trim());
  return [...records.filter(isNumber), ...records.filter((record) => !isNumber(record))];
}

function offered({ title, number, line }: ShownRecord, take: () => void): Element {
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'worded';
  button.textContent = title;
  button.addEventListener('click', take);
  const said = document.createElement('span');
  said.textContent = findWords.numbered(number, line);
  const place = document.createElement('li');
  place.append(button, said);
  return place;
}
