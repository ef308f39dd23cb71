import { wordsOf } from '../../find/fold.ts';
import type { FindRecord } from '../../find/record.ts';
import { compareWords as words } from '../../words/compare.ts';
import { readJson } from '../read-json.ts';

/** As many answers as are read before another word is typed. */
const FEW = 8;

/** Lets a visitor find a listed piece by its number or words of it; `records` names the file of what can be found. */
export function hearAdding(place: HTMLElement, records: string, add: (id: string) => void): void {
  const field = place.querySelector('input');
  const answers = place.querySelector('[data-part="answers"]');
  const says = place.querySelector('[data-part="answers-say"]');
  if (field === null || answers === null || says === null) return;
  let loading: Promise<readonly FindRecord[]> | null = null;
  const load = async (): Promise<readonly FindRecord[]> => (await readJson(records)) as readonly FindRecord[];

  const answer = async (): Promise<void> => {
    const asked = field.value;
    if (asked.trim() === '') {
      answers.replaceChildren();
      says.textContent = '';
      return;
    }
    try {
      loading ??= load();
      const found = answering(await loading, asked);
      if (asked !== field.value) return;
      says.textContent = found.length > FEW ? words.first(FEW, found.length) : words.answers(found.length);
      answers.replaceChildren(...found.slice(0, FEW).map((record) => offered(record, () => take(record.id))));
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

/** The records that hold every word asked for, those whose number was asked for first. */
function answering(records: readonly FindRecord[], asked: string): readonly FindRecord[] {
  const sought = wordsOf(asked);
  if (sought.length === 0) return [];
  const found = records.filter((record) => sought.every((word) => ` ${record.words}`.includes(` ${word}`)));
  const isNumber = ({ line }: FindRecord): boolean =>
    wordsOf(line.split(' · ')[0] ?? '').join(' ') === sought.join(' ');
  return [...found.filter(isNumber), ...found.filter((record) => !isNumber(record))];
}

function offered({ title, line }: FindRecord, take: () => void): Element {
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'worded';
  button.textContent = title;
  button.addEventListener('click', take);
  const said = document.createElement('span');
  said.textContent = line;
  const place = document.createElement('li');
  place.append(button, said);
  return place;
}
