import type { Finder } from '../find/choose.ts';
import { mayMeasure } from '../find/fold.ts';
import type { PackedRecords, PackedTexts } from '../find/pack.ts';
import type { ReadMeasure } from '../find/parse-query.ts';
import type { FindState } from '../find/state.ts';
import { readJson } from './read-json.ts';

/** What finds, in how many pieces, and whether it knows the words of their texts. */
export type Ready = { readonly all: number; readonly find: Finder; readonly isWhole: boolean };

type Files = { readonly records: string; readonly texts: string };

/**
 * Brings what finds: what searches and the records at once, the words of their texts when the first answer is on the screen. `sent` is the first request for
 * the records, where that was sent already.
 */
export class FindFiles {
  readonly #files: Files;
  #sent: Promise<Response> | null;
  #records: Promise<Ready & { readonly packed: PackedRecords }> | null = null;
  #texts: Promise<Ready> | null = null;
  #read: ReadMeasure = () => null;

  constructor(files: Files, sent: Promise<Response> | null) {
    this.#files = files;
    this.#sent = sent;
  }

  /** What answers as soon as it can. A legend is in the texts alone; for words those are not waited for. */
  async early({ words, legend }: FindState): Promise<Ready> {
    const [ready] = await Promise.all([
      legend === '' ? Promise.race([...(this.#texts === null ? [] : [this.#texts]), this.#early()]) : this.whole(),
      // What reads dates, weights and sizes comes once one of them may be asked for.
      mayMeasure(words) ? this.#bringReader() : null,
    ]);
    return ready;
  }

  /** What answers everything; its texts are fetched when this is first asked for. */
  whole(): Promise<Ready> {
    this.#texts ??= this.#early().then(async ({ packed, all }) => {
      const [{ finderOf }, texts] = await Promise.all([import('../find/choose.ts'), readJson(this.#files.texts)]);
      await drawn();
      return { all, find: finderOf(packed, texts as PackedTexts, (text) => this.#read(text)), isWhole: true };
    });
    return this.#texts;
  }

  /** Lets go of what did not come, so that asking tries again. */
  forget(): void {
    this.#records = null;
    this.#texts = null;
  }

  #early(): Promise<Ready & { readonly packed: PackedRecords }> {
    const sent = this.#sent;
    this.#sent = null;
    this.#records ??= Promise.all([import('../find/choose.ts'), readJson(this.#files.records, sent)]).then(
      async ([{ finderOf }, read]) => {
        await drawn();
        const packed = read as PackedRecords;
        const find = finderOf(packed, null, (text) => this.#read(text));
        await drawn();
        return { all: packed.to.length, find, isWhole: false, packed };
      },
    );
    return this.#records;
  }

  async #bringReader(): Promise<void> {
    this.#read = (await import('../find/read-measure.ts')).readMeasure;
  }
}

/** When what has changed is on the screen; where nothing is drawn, a little later. */
export function drawn(): Promise<void> {
  return new Promise((settle) => {
    setTimeout(settle, 100);
    requestAnimationFrame(() => setTimeout(settle));
  });
}
