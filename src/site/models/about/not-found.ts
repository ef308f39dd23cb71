import { urls } from '../../urls.ts';
import { notFoundWords } from '../../words/not-found.ts';
import type { PageHead } from '../shared/head.ts';

export function notFoundHead(): PageHead {
  return { title: notFoundWords.title, here: urls.home(), unlisted: true };
}
