import type { ComparedFace } from '../../compare/record.ts';

/** A face as it lies on the board; addresses in it are meant from the file `from`. Null when the forms are not in the page. */
export function layFace(face: ComparedFace, forms: HTMLTemplateElement, from: string): HTMLElement | null {
  const isPictured = 'pictures' in face;
  const laid = forms.content.querySelectorAll('.face')[isPictured ? 0 : 1]?.cloneNode(true);
  if (!(laid instanceof HTMLElement)) return null;
  laid.classList.add(...face.wide.split(' '));
  if (isPictured && laid instanceof HTMLImageElement) {
    const address = (src: string): string => new URL(src, from).href;
    laid.alt = face.alt;
    laid.width = face.width;
    laid.height = face.height;
    laid.loading = 'eager';
    laid.srcset = face.pictures.map(({ src, width }) => `${address(src)} ${width}w`).join(', ');
    laid.dataset['mm'] = String(face.millimetres);
  }
  if (!isPictured && !('pictures' in face)) {
    laid.classList.remove('disc', 'round', 'stuff');
    laid.classList.add(...face.tall.split(' '), ...face.look.split(' '));
    laid.role = 'img';
    laid.ariaLabel = face.alt;
    const says = laid.querySelector('.says');
    if (says !== null) says.textContent = face.says;
  }
  return laid;
}

/** Tells a laid picture how wide it is shown, so that a file just large enough is fetched. True when none is. */
export function showAt(laid: Element, pixelsAMillimetre: number): boolean {
  if (!(laid instanceof HTMLImageElement)) return false;
  const wide = Number(laid.dataset['mm']) * pixelsAMillimetre;
  laid.sizes = `${Math.ceil(wide)}px`;
  // The attribute: the property tells how wide it lies on the page.
  return wide > Number(laid.getAttribute('width'));
}
