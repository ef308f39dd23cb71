/**
 * Mutants: what guards a keeper, each time with one thing wrong in it, made mechanically. A condition is negated, `and` and `or`
 * change places, a call is removed, an entry of a list is dropped. One that no test notices is a hole in the tests, or code that
 * does nothing. No file is changed.
 *
 *     node tests/oracle/mutants.ts                      every mutant of every file
 *     node tests/oracle/mutants.ts --every 4            a sample; --first 1, 2 and 3 are the other three quarters
 *     node tests/oracle/mutants.ts --file sums --told   of one file, with the test that noticed each
 *     node tests/oracle/mutants.ts --file sums --only '.trim removed'    of those the ones that are told of with these words
 *     node tests/oracle/mutants.ts --tests 1            against the likeliest test file alone, which is quicker and misses more
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import process from 'node:process';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import ts from 'typescript';

const tested = (folder: string, names: string): readonly string[] =>
  names.split(' ').map((name) => `tests/${folder}/${name}.test.ts`);
const guards = (folder: string, files: string, tests: readonly string[]) =>
  [files.split(' ').map((name) => `${folder}/${name}.ts`), tests] as const;
/** The files, and the tests that should notice, the likeliest first. */
const GUARDS: readonly (readonly [files: readonly string[], tests: readonly string[]])[] = [
  guards('src/privacy', 'exact-spots machine-paths', tested('privacy', 'exact-spots every-text leaks inspect-built disguised private-values')),
  guards('src/privacy', 'page-policy private-files not-secret public-words privacy', tested('privacy', 'leaks said-in-public exact-spots private-values inspect-built')),
  guards('src/privacy', 'private-cells', tested('privacy', 'private-cells private-tables disguised leaks')),
  guards('src/privacy', 'sums written-currencies spelled-numbers', tested('privacy', 'sums private-values disguised')),
  guards('src/privacy', 'private-values told-by-column private-notes', tested('privacy', 'private-notes private-tables private-values said-in-public disguised leaks')),
  guards('src/privacy', 'private-in-text', tested('privacy', 'disguised private-values leaks')),
  guards('src/privacy', 'hidden-in-text exact-in-text', tested('privacy', 'every-text inspect-built disguised leaks')),
  guards('src/privacy', 'inspect-built', tested('privacy', 'inspect-built inspected-with')),
  guards('src/privacy', 'hidden-pieces', tested('privacy', 'hidden-pieces inspect-built disguised private-values leaks')),
  guards('src/privacy', 'letters find-values guard', tested('privacy', 'letters find-values inspected-with disguised hidden-pieces private-values leaks inspect-built')),
  guards('src/privacy', 'picture-segments', tested('privacy', 'picture-bytes picture-segments')),
  guards('src/privacy', 'git', tested('privacy', 'git')),
  guards('src/publish', 'public-piece public-facts', [...tested('publish', 'public-piece set-piece public-facts there-and-back tables'), ...tested('site/models/open-data', 'open-data linked manifests records')]),
  guards('src/publish', 'set-piece set-states', [...tested('publish', 'set-piece'), 'tests/core/sets/cabinets.test.ts', 'tests/catalogue/types.test.ts', ...testsIn('tests/site/models/sets')]),
  guards('src/publish', 'pieces-csv pieces-schema', [...tested('publish', 'for-machines there-and-back tables'), ...tested('site/models/open-data', 'records open-data')]),
  guards('src/publish', 'json-ld', [...tested('publish', 'linked-piece dates-for-others'), ...tested('site/models/open-data', 'linked')]),
  guards('src/publish', 'cite host-files', tested('publish', 'cite host-files')),
  guards('src/publish', 'linked-lists', [...tested('publish', 'linked-lists'), ...tested('site/models/open-data', 'linked')]),
  guards('src/publish', 'iiif', [...tested('publish', 'iiif'), ...tested('site/models/open-data', 'manifests linked')]),
  guards('src/publish', 'exhibit-json-ld identifiers licences xml', [...tested('publish', 'for-machines'), ...tested('site/models/open-data', 'linked feed xml-rules')]),
  guards('src/publish/offline-copy', 'classic-script make-offline-copy places', testsIn('tests/publish/offline-copy')),
]; // prettier-ignore
/** What may come to such a file by its imports. */
const AGAIN = ['src/privacy/', 'src/publish/', 'src/site/', 'tests/'];
/** Of the processor, in microseconds, so that a busy machine does not matter: what the tests may take before any mutant. */
const LONGEST = 120_000_000;
/** A mutant that takes three times as much as the tests without one, and this besides, goes round for ever. */
const BESIDES = 2_000_000;

function testsIn(folder: string): readonly string[] {
  return readdirSync(folder).filter((name) => name.endsWith('.test.ts')).map((name) => `${folder}/${name}`); // prettier-ignore
}

type Mutant = { readonly from: number; readonly to: number; readonly text: string; readonly what: string };

const TURNED: Readonly<Record<string, string>> = { '&&': '||', '||': '&&', '??': '&&', '===': '!==', '!==': '===', '<': '>=', '>': '<=', '<=': '>', '>=': '<' }; // prettier-ignore
const REMOVED = [
  'filter',
  'trim',
  'toLowerCase',
  'replace',
  'replaceAll',
  'normalize',
  'flat',
  'slice',
  'toSorted',
  'sort',
];

/** Every mutant of a source text, in its order. */
function mutantsOf(source: string): readonly Mutant[] {
  const tree = ts.createSourceFile('it.ts', source, ts.ScriptTarget.Latest, true);
  const found: Mutant[] = [];
  const put = (node: ts.Node, text: string, what: string): void =>
    void found.push({ from: node.getStart(tree), to: node.end, text, what });
  const negate = (condition: ts.Expression): void => put(condition, `!(${condition.getText(tree)})`, 'negated');
  const drop = (all: ts.NodeArray<ts.Node>): void => {
    for (const [at, one] of all.entries()) {
      const [before, next] = [all[at - 1], all[at + 1]];
      if (next !== undefined) found.push({ from: one.getStart(tree), to: next.getStart(tree), text: '', what: 'dropped' });
      else if (before !== undefined) found.push({ from: before.end, to: one.end, text: '', what: 'dropped' });
      else put(one, '', 'dropped');
    }
  }; // prettier-ignore
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node)) return;
    if (ts.isIfStatement(node) || ts.isWhileStatement(node)) negate(node.expression);
    if (ts.isConditionalExpression(node)) negate(node.condition);
    if (ts.isArrayLiteralExpression(node)) drop(node.elements);
    if (ts.isObjectLiteralExpression(node) && node.properties.length > 3) drop(node.properties);
    if (ts.isBinaryExpression(node)) {
      const other = TURNED[node.operatorToken.getText(tree)];
      if (other !== undefined) put(node.operatorToken, other, 'turned round');
    }
    if (ts.isExpressionStatement(node) && ts.isCallExpression(node.expression)) put(node, ';', 'removed');
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const { name, expression } = node.expression;
      if (REMOVED.includes(name.text)) put(node, expression.getText(tree), `.${name.text} removed`);
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

/** Tries texts in the place of a file, and tells of each the test that noticed it, or null, as soon as it is known. */
function tryAll(
  file: string,
  texts: readonly (string | null)[],
  tests: readonly string[],
  tell: (turn: number, noticed: string | null) => void,
): Promise<void> {
  return new Promise((done) => {
    let longest = LONGEST;
    const start = (from: number): void => {
      if (from >= texts.length) {
        done();
        return;
      }
      const thread = new Worker(new URL('try-mutants.mjs', import.meta.url), {
        workerData: { file, texts, tests, again: AGAIN, from },
      });
      let next = from;
      const ends = (because: string): void => {
        tell(next, because);
        clearInterval(watch);
        thread.removeAllListeners();
        void thread.terminate().then(() => start(next + 1));
      };
      let began = process.cpuUsage();
      const watch = setInterval(() => {
        const { user, system } = process.cpuUsage(began);
        if (user + system > longest) ends('it goes round for ever');
      }, 500);
      thread.on('message', ({ turn, noticed }: { turn: number; noticed: string | null }) => {
        tell(turn, noticed);
        next = turn + 1;
        const { user, system } = process.cpuUsage(began);
        if (turn === 0) longest = 3 * (user + system) + BESIDES;
        began = process.cpuUsage();
        if (next < texts.length) return;
        clearInterval(watch);
        done();
      });
      thread.on('error', (error) => {
        ends(String(error));
      });
    };
    start(0);
  });
}

const named = new Set(GUARDS.flatMap(([files]) => files));
const there = ['src/privacy', 'src/publish', 'src/publish/offline-copy'].flatMap((folder) =>
  readdirSync(folder).filter((name) => name.endsWith('.ts')).map((name) => `${folder}/${name}`),
); // prettier-ignore
const apart = [...there.filter((file) => !named.has(file)), ...[...named].filter((file) => !there.includes(file))];
if (apart.length > 0) throw new Error(`In the list of guards or in their folders alone: ${apart.join(', ')}`);

const { values } = parseArgs({
  options: {
    every: { type: 'string', default: '1' },
    first: { type: 'string', default: '0' },
    tests: { type: 'string', default: '99' },
    file: { type: 'string' },
    only: { type: 'string' },
    told: { type: 'boolean' },
  },
});
// What the tests of thousands of mutants put into the folder of the machine goes with it.
const room = mkdtempSync(join(tmpdir(), 'mutants-'));
process.env['TMPDIR'] = room;
process.on('exit', () => {
  rmSync(room, { recursive: true });
});
const say = (line: string): boolean => process.stdout.write(`${line}\n`);
const sum = { tried: 0, survived: 0 };
for (const [files, tests] of GUARDS)
  for (const file of files.filter((one) => values.file === undefined || basename(one, '.ts') === values.file)) {
    const source = readFileSync(file, 'utf8');
    const toldOf = ({ from, to, what }: Mutant): string =>
      `${basename(file)}:${source.slice(0, from).split('\n').length} ${what}: ${source.slice(from, to).replace(/\s+/g, ' ').slice(0, 90)}`;
    const mutants = mutantsOf(source)
      .filter((_, at) => at % Number(values.every) === Number(values.first))
      .filter((mutant) => toldOf(mutant).includes(values.only ?? ''));
    const texts = mutants.map(({ from, to, text }) => source.slice(0, from) + text + source.slice(to));
    let survived = 0;
    await tryAll(file, [null, ...texts], tests.slice(0, Number(values.tests)), (turn, noticed) => {
      const mutant = mutants[turn - 1];
      if (mutant === undefined && noticed !== null)
        throw new Error(`The tests of ${file} fail without a mutant: ${noticed}`);
      if (mutant === undefined) return;
      if (noticed === null) {
        survived += 1;
        say(`SURVIVED ${toldOf(mutant)}`);
      } else if (values.told === true) say(`${toldOf(mutant)}\n    ${noticed}`);
    });
    sum.tried += mutants.length;
    sum.survived += survived;
    say(`${file}: ${mutants.length} mutants, ${survived} survived`);
  }
say(`${sum.tried} mutants, ${sum.tried - sum.survived} noticed, ${sum.survived} survived`);
