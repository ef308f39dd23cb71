import type { ComparedFace } from '../../compare/record.ts';
import { STRAIGHT } from '../../compare/state.ts';
import type { Lie } from '../../compare/state.ts';
import { compareWords } from '../../words/compare.ts';
import { layFace, showAt } from './lay-face.ts';

/** A face to lay, and the file its addresses are meant from. */
export type FaceToLay = { readonly face: ComparedFace; readonly from: string; readonly title: string };

/** What is asked of the pieces that lie there, and what is told when one was moved. */
type OverlayActions = { readonly swap: () => void; readonly next: () => void; readonly moved: (lie: Lie) => void };

/** What a press of a key moves, in millimetres, and turns, in degrees. */
const STEP = { move: 0.2, turn: 1 } as const;
const { over: words } = compareWords;

/** One face over another, moved and turned by pointer and by keys. */
export class OneOverOther {
  readonly #place: HTMLElement;
  #lie = STRAIGHT;
  #upper: HTMLElement | null = null;
  #isLifted = false;
  #pixelsAMillimetre = 1;

  readonly #moved: OverlayActions['moved'];

  constructor(place: HTMLElement, { swap, next, moved }: OverlayActions) {
    this.#place = place;
    this.#moved = moved;
    const stage = this.#part('stage');
    stage.addEventListener('keydown', (event) => this.#press(event));
    this.#part('fade').addEventListener('input', () => this.#show());
    this.#part('lift').addEventListener('click', () => this.#lift());
    this.#part('straight').addEventListener('click', () => this.#put(STRAIGHT));
    this.#part('swap').addEventListener('click', swap);
    this.#part('next').addEventListener('click', next);
    for (const button of place.querySelectorAll<HTMLElement>('[data-turn]'))
      button.addEventListener('click', () => this.#turn(Number(button.dataset['turn'])));
    for (const button of place.querySelectorAll<HTMLElement>('[data-x]'))
      button.addEventListener('click', () =>
        this.#move(Number(button.dataset['x']) * STEP.move, Number(button.dataset['y']) * STEP.move),
      );
    this.#hearPointer(stage);
  }

  /** Lays one face over another; a sentence in place of them when either was not photographed. */
  lay(lower: FaceToLay, upper: FaceToLay, lie: Lie, forms: HTMLTemplateElement, pixelsAMillimetre: number): void {
    this.#lie = lie;
    const stage = this.#part('stage');
    const isPictured = 'pictures' in lower.face && 'pictures' in upper.face;
    const faces = isPictured ? [lower, upper].map(({ face, from }) => layFace(face, forms, from)) : [];
    const laid = faces.filter((face) => face !== null);
    this.#upper = laid[1] ?? null;
    this.#pixelsAMillimetre = pixelsAMillimetre;
    stage.hidden = !isPictured;
    for (const face of laid) showAt(face, pixelsAMillimetre);
    const side = Math.max(lower.face.millimetres, upper.face.millimetres) * 1.06;
    stage.style.setProperty('--wide', String(side));
    stage.style.setProperty('--high', String(side));
    stage.ariaLabel = words.name(upper.title, lower.title);
    stage.replaceChildren(...laid);
    this.#part('over-name').textContent = isPictured ? words.name(upper.title, lower.title) : words.noPicture;
    this.#show();
  }

  #part(name: string): HTMLElement {
    return this.#place.querySelector<HTMLElement>(`[data-part="${name}"]`) ?? document.createElement('div');
  }

  #press(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const times = event.shiftKey ? 5 : 1;
    const { key } = event;
    if (key === 'ArrowLeft') this.#move(-STEP.move * times, 0);
    else if (key === 'ArrowRight') this.#move(STEP.move * times, 0);
    else if (key === 'ArrowUp') this.#move(0, -STEP.move * times);
    else if (key === 'ArrowDown') this.#move(0, STEP.move * times);
    else if (key === '[' || key === '{') this.#turn(-STEP.turn * times);
    else if (key === ']' || key === '}') this.#turn(STEP.turn * times);
    else if (key === ' ') this.#lift();
    else if (key === '0') this.#put(STRAIGHT);
    else return;
    event.preventDefault();
  }

  #hearPointer(stage: HTMLElement): void {
    stage.addEventListener('pointerdown', (event) => stage.setPointerCapture(event.pointerId));
    stage.addEventListener('pointermove', (event) => {
      if (!stage.hasPointerCapture(event.pointerId)) return;
      this.#move(event.movementX / this.#pixelsAMillimetre, event.movementY / this.#pixelsAMillimetre);
    });
  }

  #move(across: number, down: number): void {
    this.#put({ ...this.#lie, across: this.#lie.across + across, down: this.#lie.down + down });
  }

  #turn(by: number): void {
    const degrees = (((this.#lie.degrees + by + 180) % 360) + 360) % 360;
    this.#put({ ...this.#lie, degrees: degrees - 180 });
  }

  #lift(): void {
    this.#isLifted = !this.#isLifted;
    this.#show();
  }

  #put(lie: Lie): void {
    this.#lie = lie;
    this.#show();
    this.#moved(lie);
  }

  #show(): void {
    const { degrees, across, down } = this.#lie;
    const lift = this.#part('lift');
    lift.ariaPressed = String(this.#isLifted);
    lift.textContent = this.#isLifted ? words.lay : words.lift;
    this.#part('over-says').textContent = words.says(degrees, across, down);
    const fade = this.#part('fade');
    const seen = fade instanceof HTMLInputElement ? Number(fade.value) / 100 : 1;
    this.#upper?.style.setProperty('opacity', this.#isLifted ? '0' : String(seen));
    this.#upper?.style.setProperty(
      'transform',
      `translate(${across * this.#pixelsAMillimetre}px, ${down * this.#pixelsAMillimetre}px) rotate(${degrees}deg)`,
    );
  }
}
