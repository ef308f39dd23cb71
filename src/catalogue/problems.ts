import { nearestName } from './nearest.ts';

const quote = (text: string): string => `"${text}"`;

/** The name a file of this name would have: `edward-i` for `Edward I`. */
function fileName(name: string): string {
  const plain = name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/æ/g, 'ae');
  return plain.replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'york-penny';
}

/** "Write york." when a known name is near, otherwise where the names come from. */
function suggest(found: string, known: readonly string[], otherwise: string): string {
  const nearest = nearestName(found, known);
  return nearest === null ? otherwise : `Write ${nearest}.`;
}

/**
 * Every problem a cabinet can have, under a permanent name: what is wrong, then text that can be pasted in.
 * Problems that a parser of the core finds carry the parser's own sentence.
 */
export const PROBLEMS = {
  // The cabinet and its files
  'cabinet-missing': (folder: string) =>
    `There is no cabinet at ${folder}. Name the folder that holds cabinet.yaml with --cabinet.`,
  'file-not-utf-8': () => 'This file is not UTF-8 text. Open it in a text editor and save it again as UTF-8.',
  'file-unknown': (name: string) =>
    `Nothing reads a file called ${quote(name)} here. Move it out of the cabinet, or give it the name it should have.`,
  'file-missing': (name: string) => `There is no ${name} here. Add one, or remove the folder.`,
  'folder-name': (name: string) =>
    `A folder or list file is named with small letters, digits and single hyphens; this is ${quote(name)}. Write ${quote(fileName(name))}.`,
  'name-long': (length: number, most: number) =>
    `This name has ${length} letters, and a folder or list file has at most ${most}. Shorten it.`,
  'name-reserved': (name: string) =>
    `Some systems cannot have a file called ${quote(name)}. Write ${quote(`${name}-1`)}.`,
  'front-matter-open': () => 'The facts begin with a line --- and are not ended by one. Write --- alone on this line.',
  'curly-quotes': () =>
    'This value is in curly quotation marks, which are taken as a part of it. Write straight ones ("), or none.',
  'control-character': () =>
    'This line holds a character that cannot be seen, of the kind that steers a terminal. Type the line again.',
  'front-matter-missing': () =>
    'This file has no facts at its top. Begin it with a line ---, the facts, and another line ---.',
  'yaml-unreadable': (reason: string) =>
    `The facts cannot be read from here on: ${reason}. Check the indentation, the quotes and the colons of this line.`,
  'field-twice': (name: string) => `The field ${quote(name)} stands here twice. Remove one of the two.`,
  // The fields
  'field-misspelt': (found: string, known: readonly string[]) =>
    `There is no field ${quote(found)} here. ${suggest(found, known, `The fields are ${known.join(', ')}.`)}`,
  'field-missing': (name: string) =>
    `The field ${quote(name)} is wanted here and is not there. Add a line ${name}: with its value.`,
  'choice-unknown': (found: string, known: readonly string[]) =>
    `${quote(found)} is not one of the words this field takes. ${suggest(found, known, `Write one of ${known.join(', ')}.`)}`,
  'form-wrong': (wanted: string) => `This field wants ${wanted}.`,
  'name-form': (found: string) =>
    `This wants the name of a file, in small letters with hyphens; this says ${quote(found)}. Write ${fileName(found)}.`,
  'value-wrong': (sentence: string) => sentence,
  'date-unreadable': (sentence: string) => sentence,
  'weight-unreadable': (sentence: string) => sentence,
  'length-unreadable': (sentence: string) => sentence,
  'size-unreadable': (sentence: string) => sentence,
  'fineness-unreadable': (sentence: string) => sentence,
  'axis-unreadable': (sentence: string) => sentence,
  'legend-unreadable': (sentence: string) => sentence,
  'grade-unreadable': (sentence: string) => sentence,
  'reference-unreadable': (sentence: string) => sentence,
  'crop-unreadable': (sentence: string) => sentence,
  'position-unreadable': (sentence: string) => sentence,
  'case-unreadable': (sentence: string) => sentence,
  'holder-unreadable': (sentence: string) => sentence,
  'money-unreadable': (sentence: string) => sentence,
  // Photographs
  'picture-unreadable': () =>
    'This photograph cannot be opened. Save it again as JPEG, PNG, TIFF, WebP or AVIF, or remove it.',
  'picture-too-small': (width: number, height: number, least: number) =>
    `This photograph is ${width} × ${height} pixels, too small to show a piece. Use one of at least ${least} pixels each way.`,
  'picture-broken': () =>
    'This photograph is damaged or breaks off before its end. Copy it again from the camera or the telephone, or remove it.',
  'picture-too-large': (width: number, height: number, millions: number) =>
    `This photograph is ${width} × ${height} pixels, and one of more than ${millions} million is not opened. Save a smaller copy in its place.`,
  'crop-outside': (width: number, height: number) =>
    `This crop lies outside its photograph, which is ${width} × ${height} pixels upright. Give the place of the piece within it, like crop: 25 25 50 50 %.`,
  // Between files
  'number-twice': (number: string, holder: string) =>
    `The number ${quote(number)} already belongs to the piece ${holder}. Give this one a number of its own.`,
  'name-unknown': (found: string, folder: string, known: readonly string[]) =>
    `There is no file ${folder}/${found}.yaml. ${suggest(found, known, `Add one, or write one of the names in ${folder}/.`)}`,
  'work-unknown': (found: string, known: readonly string[]) =>
    `There is no file works/${found}.yaml for this book. ${suggest(found, known, 'Add one, or begin the reference with one of the names in works/.')}`,
  'struck-for-same': () =>
    'This names the ruler the piece is in the name of anyway. Take the line out, or name the ruler it was made for.',
  'axis-on-uniface': (hours: number) => `A uniface piece has no die axis; this says ${hours}h. Write axis: none.`,
  'reverse-on-uniface': () =>
    'A uniface piece has no legend on its reverse. Take the reverse out, or write faces: two.',
  'picture-name-unknown': (name: string) =>
    `A photograph is called obverse, reverse, edge or detail-1; this is ${quote(name)}. Call it obverse.jpg, or move it out of the cabinet.`,
  'photograph-missing': (face: string) =>
    `This credits a photograph of the ${face}, and none is next to the file. Add ${face}.jpg to the folder, or take the line out.`,
  'photograph-twice': (face: string) => `There are two photographs called ${face} in this folder. Rename one detail-1.`,
  'made-in-future': (text: string, day: string) =>
    `This says that the piece was made in ${quote(text)}, and today is ${day}. Write the year it was made; a later year that stands on it goes into dated:.`,
  'date-in-future': (text: string, day: string) =>
    `${quote(text)} is still to come: today is ${day}. Write the day it was, or take it out until then.`,
  'doubt-about-nothing': (field: string) =>
    `This doubts ${field}, and ${field} is not stated. Add a line ${field}: or take the doubt out.`,
  'grade-on-ungraded': (reason: string) =>
    `Wear says nothing about this piece (${reason}), so it is not graded, which is not the same as poor. Write grade: not graded.`,
  'spot-too-exact': (text: string) =>
    `"${text}" names an exact spot, which would be published. Move it to the column find-spot of private/ledger.csv and write the parish or the district here, or answer for it as place in private/not-secret.csv.`,
  'hidden-in-text': (id: string) =>
    `This tells of ${id}, which is not to be published. Take its folder's name, its title and its number out of this text.`,
  'unlisted-in-text': (id: string) =>
    `This names ${id}, which is unlisted and may stand on its own page only. Take its name out of this text.`,
  'path-in-text': (what: string) => `This names ${what}, which would be published. Take the path out of this text.`,
  'ledger-in-piece': (column: string) =>
    `What a sheet said of ${column} is private, and this file is not. Move it to private/ledger.csv and take the line out here.`,
  'link-rooted': (address: string) =>
    `The link ${address} breaks where the site is in a folder of its host. Write it from this page on, like ../york-penny/.`,
  'image-in-story': () =>
    'A story shows no pictures, and one from elsewhere would tell its host of every visitor. Put the photograph beside this file as detail-1.jpg, or write a plain link.',
  'range-reversed': (from: string, to: string) =>
    `This runs backwards, from ${from} to ${to}. Write the earlier date first.`,
  'formerly-itself': (old: string) => `A piece was not formerly itself. Take ${old} out of formerly.`,
  'formerly-in-use': (old: string, id: string) =>
    `${old} is the id of another piece and cannot lead to ${id}. Take it out of formerly.`,
  'formerly-circular': (old: string, id: string) =>
    `${old} and ${id} each say they were formerly the other. Take one of the two lines out.`,
  'formerly-twice': (old: string, other: string) =>
    `The old id ${old} already leads to ${other}. Take it out of one of the two.`,
  // Addresses that were published
  'address-unreadable': (line: string) =>
    `This line is not an address with what stands there: ${quote(line)}. Write one such as pieces/york-penny/ withdrawn, or put back the line of an earlier copy.`,
  'address-lost-piece': (address: string, id: string, same: string | null) =>
    `${address} was published, and nothing answers there now. If the piece has another folder, write formerly: ${id} in ${same === null ? 'its file' : `pieces/${same}/piece.md, which says the same`}. To let the address go, write here: ${address} withdrawn`,
  'address-lost': (address: string, to: string) =>
    `${address} was published, and nothing answers there now. If it has another name, write here: ${address} now ${to}. To let it go: ${address} withdrawn`,
  'address-hidden': (address: string) =>
    `${address} was published, and the piece is now publish: no. To let the address go, write here: ${address} withdrawn`,
  'address-leads-nowhere': (address: string, to: string) =>
    `${address} leads to ${to}, and nothing answers there. Write where it has moved, or: ${address} withdrawn`,
  // Eras, sets, exhibits
  'period-reversed': (name: string) =>
    `The period ${quote(name)} ends before it begins. Write the earlier year in from.`,
  'periods-overlap': (before: string, name: string, wanted: number) =>
    `${quote(name)} begins before ${quote(before)} has ended. Write from: ${wanted}, or gaps: yes if the scheme itself overlaps.`,
  'periods-gap': (before: string, name: string, wanted: number) =>
    `There are years between ${quote(before)} and ${quote(name)}. Write from: ${wanted}, or gaps: yes if the scheme itself leaves them out.`,
  'era-place-unknown': (found: string, known: readonly string[]) =>
    `No mint, find or area here is called ${quote(found)}, so the scheme would not apply to it. ${suggest(found, known, `Write one of ${known.slice(0, 8).join(', ')}, or name it under areas: in cabinet.yaml.`)}`,
  'set-rule': (sentence: string) => sentence,
  'set-word-unknown': (none: string, found: string, known: readonly string[]) =>
    `${none} ${quote(found)}. ${suggest(found, known, `Write one of ${known.slice(0, 12).join(', ')}.`)}`,
  'aim-unreadable': (sentence: string) => sentence,
  'exhibit-piece-unknown': (found: string, known: readonly string[]) =>
    `There is no piece ${quote(found)} to show. ${suggest(found, known, 'Write the name of a folder in pieces/.')}`,
  'exhibit-piece-unpublished': (id: string) =>
    `${id} is not published to every visitor and cannot be shown. Write publish: yes in its file, or take it out here.`,
  'exhibit-piece-gone': (id: string, status: string) =>
    `${id} is ${status} and no longer with you. Take it out of the exhibit.`,
  'exhibit-piece-twice': (id: string) =>
    `${id} is shown twice in this exhibit. A piece lies in one place; take one of the two out.`,
  'exhibit-type-small': (points: number, least: number) =>
    `Type of ${points} pt cannot be read in a case. Write at least ${least} pt.`,
  // The private tables
  'column-unknown': (found: string, known: readonly string[]) =>
    `There is no column ${quote(found)} here, so nothing guards it. ${suggest(found, known, `The columns are ${known.join(', ')}.`)}`,
  'column-missing': (name: string) =>
    `There is no column ${quote(name)} here, so a row belongs to nothing. Put ${name} first in the first line, and in each row the name of the folder.`,
  'row-uneven': (cells: number, headings: number) =>
    `This row has ${cells} ${cells === 1 ? 'cell' : 'cells'} and the first line ${headings} headings. ${cells > headings ? 'Put a cell that holds a comma between quotation marks, like "cleaned, bent".' : 'Write a comma for each cell that is empty.'}`,
  'table-separator': (mark: string) =>
    `The columns of this table are separated by ${mark}. Save it again as CSV with commas.`,
  'row-names-nothing': (found: string, folder: string, known: readonly string[], meant: string | null) =>
    `${quote(found)} is the name of nothing in ${folder}/. ${meant === null ? suggest(found, known, `Write one of the names in ${folder}/, or take the line out if it is about nothing that is there.`) : `Write ${meant}, which has that number.`}`,
  'private-in-text': (hint: string, column: string, from: string, line: number) =>
    `What the column ${column} of ${from} keeps in its line ${line}, ${hint}, stands here too and would be published. Take it out of this text, or, if it may be known, write it into private/not-secret.csv.`,
  'private-in-name': (hint: string, column: string, from: string, line: number) =>
    `What the column ${column} of ${from} keeps in its line ${line}, ${hint}, is in the name of this file, which would be published. Give it another name.`,
  'told-twice': (column: string, field: string, count: number, both: string) =>
    `The column ${column} of the ledger says the same as the ${field} of ${count === 1 ? 'this piece' : `${count} pieces, of which this is the first`}, and that is published. Of a sheet, one column may have been read as both. Take out the ${field}; or, if all of it may be read by anybody, write ${quote(both)} as the column, * and today's date into private/not-secret.csv.`,
  'private-misspelt': (found: string, meant: string) =>
    `Nothing reads ${found}, so nothing in it is guarded. Name it ${meant}${found.toLowerCase().endsWith('.csv') ? '' : ', saved as CSV from your spreadsheet'}.`,
  'cell-unreadable': (sentence: string) => sentence,
  // Types
  'type-unknown': (sentence: string) => sentence,
  'series-column': (found: string, near: string | null, known: readonly string[]) =>
    `Nothing reads a column ${quote(found)} here. ${near === null ? `The columns are ${known.join(', ')}, and the characters of series.yaml.` : `Write ${near}.`}`,
  'drawing-missing': (name: string, folder: string, known: readonly string[]) =>
    `There is no ${name} in ${folder}/. ${suggest(name, known, 'Put the drawing there as an SVG file, or take this word out.')}`,
  'drawing-unreadable': (sentence: string) => sentence,
  'drawing-unused': (name: string) =>
    `No state in series.yaml names this drawing, so nobody will see it. Write drawing: ${name} at the state it shows, or take the file away.`,
  'guide-place-unknown': (found: string, set: string, known: readonly string[]) =>
    `The set ${set} has no place ${quote(found)}. ${suggest(found, known, `Its places are ${known.join(', ')}.`)}`,
  'private-tracked': (file: string) =>
    `git tracks ${file}, and would publish it with the rest. Write private/ into .gitignore and run: git rm --cached -r private`,
  'private-not-ignored': (pattern: string) =>
    `git does not track this yet, and would take it up with the next git add. Write ${pattern} into .gitignore.`,
  'private-away': () =>
    'private is a link to a folder that is not there, so nothing private can be looked for. Bring that folder back, or remove the link.',
  'file-linked': () =>
    'This is a link to another place, and only private may be one. Put the file or folder itself here.',
  'life-impossible': (sentence: string) => sentence,
  'life-status': (said: string, status: string) =>
    `private/life.csv says that this piece is ${status}; this says ${said}. Take the line out, or correct private/life.csv.`,
  'life-ledger': (what: string, line: number) =>
    `The ledger has another ${what} for this piece than line ${line} of private/life.csv. Correct one of the two, or empty this cell.`,
  // What was built
  'leak-private': (column: string, from: string, line: number, hint: string) =>
    `This file holds what the column ${column} of ${from} keeps in its line ${line}, ${hint}. Take it out of the public text that names it, or, if it may be known, write ${column}, the words and today's date into private/not-secret.csv.`,
  'leak-unpublished': (id: string) =>
    `This file tells of ${id}, which is not to be published. Take its name out of every public text.`,
  'leak-unlisted': (id: string) =>
    `This file names ${id}, which is unlisted and may stand on its own page only. Take its name out of other texts.`,
  'leak-keeper': () =>
    "This is a form without the keeper's name, and the name is in it. Take it out of the text of the exhibit that holds it.",
  'leak-path': (what: string) =>
    `This file names ${what}, which is nobody else's business. Take the path out of the text that holds it.`,
  'leak-in-picture': (name: string) =>
    `This picture carries ${name} besides its pixels. Remove the folder .cache and build again.`,
  'leak-picture-unread': () => 'This picture could not be inspected. Remove the folder .cache and build again.',
  'leak-remote': (address: string) =>
    `This file loads ${address} from elsewhere, which would tell its host of every visitor. Take it out of the text that holds it.`,
  'leak-policy': (what: string) =>
    `This page has no ${what}, which keeps foreign scripts and prying hosts away. Remove the folder .cache and build again.`,
  'leak-unknown-file': () => 'This is a kind of file that cannot be inspected. Take it out of public/.',
} as const;
