import type { z } from 'zod';
import { PIECE_ROWS } from './fields/piece-fields.ts';
import type { Problem, ProblemKind } from './problem.ts';
import { problem } from './problem.ts';
import { PROBLEMS } from './problems.ts';
import { ID_FORM } from './schema/fields.ts';
import { lineOf, readYaml } from './yaml.ts';
import type { Written } from './yaml.ts';

type Issue = z.core.$ZodIssue;

/** The fields of a form, all of them or those that could be read beside the problems; null when that is no form at all. */
export type FormOutcome<T> = { readonly fields: T | null; readonly problems: readonly Problem[] };

/** Facts against the form for that kind of file: the fields, or every problem with its line. */
export function readForm<T>(form: z.ZodType<T>, facts: string, file: string, factsFrom = 1): FormOutcome<T> {
  const yaml = readYaml(facts);
  if (!yaml.ok) {
    const spot = { file, line: yaml.line + factsFrom - 1 };
    return {
      fields: null,
      problems: [
        yaml.twice === null ? problem('yaml-unreadable', spot, yaml.reason) : problem('field-twice', spot, yaml.twice),
      ],
    };
  }
  const outcome = form.safeParse(yaml.value);
  if (outcome.success) return { fields: outcome.data, problems: [] };
  const problems = outcome.error.issues
    .flatMap((issue) => meant(issue, yaml.value))
    .flatMap((issue) =>
      inWords(issue, yaml.value, form, { file, lineAt: (path) => lineOf(facts, path) + factsFrom - 1 }),
    );
  return { fields: withoutSlips(form, yaml.value, outcome.error.issues), problems };
}

/**
 * The form once more without the fields that could not be read, so that what stands beside a slip is checked in the
 * same run. Null when a field is missing that must be there. A file with a problem is never published.
 */
function withoutSlips<T>(form: z.ZodType<T>, written: Written, issues: readonly Issue[]): T | null {
  if (typeof written === 'string' || Array.isArray(written)) return null;
  const slips = new Set(
    issues.flatMap((issue) => (issue.path.length > 0 ? [String(issue.path[0])] : 'keys' in issue ? issue.keys : [])),
  );
  const kept = Object.fromEntries(Object.entries(written).filter(([field]) => !slips.has(field)));
  const again = form.safeParse(kept);
  return again.success ? again.data : null;
}

/** Of a choice between forms, the issues of the one the collector seems to have meant. */
function meant(issue: Issue, written: Written): readonly Issue[] {
  if (issue.code !== 'invalid_union') return [issue];
  const branches = issue.errors.map((errors) =>
    errors.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] })),
  );
  const depth = issue.path.length;
  const fitting = branches.filter(
    (branch) =>
      !branch.some((inner) => inner.path.length === depth && ['invalid_type', 'invalid_value'].includes(inner.code)),
  );
  const chosen = fitting.at(-1) ?? branches.at(-1) ?? [];
  return chosen.flatMap((inner) => meant(inner, written));
}

function inWords(
  issue: Issue,
  written: Written,
  form: z.ZodType,
  where: { file: string; lineAt: (path: readonly PropertyKey[]) => number },
): readonly Problem[] {
  const spot = { file: where.file, line: where.lineAt(issue.path), field: issue.path.map(String).join('.') || null };
  const name = String(issue.path.at(-1) ?? '');
  const found = at(written, issue.path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => {
        const path = [...issue.path, key];
        const known = fieldsAt(form, issue.path);
        return problem(
          'field-misspelt',
          { ...spot, line: where.lineAt(path), field: path.map(String).join('.') },
          key,
          known,
        );
      });
    case 'invalid_value':
      if (found === undefined) return [problem('field-missing', spot, name)];
      return [problem('choice-unknown', spot, text(found), issue.values.map(String))];
    case 'invalid_key':
      return [problem('choice-unknown', spot, name, keyChoices(issue))];
    case 'invalid_type':
      if (found === undefined) return [problem('field-missing', spot, name)];
      return [problem('form-wrong', spot, EXAMPLES[name] ?? FORMS[issue.expected] ?? 'another form')];
    case 'too_small':
      return [
        problem(
          'form-wrong',
          spot,
          found === '' ? `a value; take the line out if ${name} is not recorded` : 'at least one entry',
        ),
      ];
    case 'custom': {
      const kind: unknown = issue.params?.['kind'];
      return [problem(isSentenceKind(kind) ? kind : 'value-wrong', spot, issue.message)];
    }
    case 'invalid_format':
      return issue.message === ID_FORM
        ? [problem('name-form', spot, text(found ?? ''))]
        : [problem('value-wrong', spot, issue.message)];
    default:
      return [problem('value-wrong', spot, issue.message)];
  }
}

/** A field that holds more than words, shown rather than described. */
const EXAMPLES: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(PIECE_ROWS)
    .filter(([, { example }]) => /^[[{]/.test(example))
    .map(([name, { example }]) => [name, `${example.startsWith('[') ? 'a list' : 'fields'}, like ${example}`]),
);

/** What the forms ask for, in a collector's words. */
const FORMS: Readonly<Record<string, string>> = {
  string: 'plain text, not a list or fields',
  array: 'a list, like [first, second]',
  object: 'fields, like { name: value }',
  record: 'fields, like { name: value }',
};

type SentenceKind = {
  [K in ProblemKind]: (typeof PROBLEMS)[K] extends (sentence: string) => string ? K : never;
}[ProblemKind];

function isSentenceKind(kind: unknown): kind is SentenceKind {
  return typeof kind === 'string' && kind.endsWith('-unreadable') && kind in PROBLEMS;
}

function text(written: Written): string {
  return typeof written === 'string' ? written : JSON.stringify(written);
}

function at(written: Written, path: readonly PropertyKey[]): Written | undefined {
  let here: Written | undefined = written;
  for (const step of path) {
    if (here === undefined || typeof here === 'string') return undefined;
    here = (here as Readonly<Record<PropertyKey, Written | undefined>>)[step];
  }
  return here;
}

function keyChoices(issue: Extract<Issue, { code: 'invalid_key' }>): readonly string[] {
  return issue.issues.flatMap((inner) => (inner.code === 'invalid_value' ? inner.values.map(String) : []));
}

/** The names of the fields the form has at this path. */
function fieldsAt(form: z.ZodType, path: readonly PropertyKey[]): readonly string[] {
  let forms: readonly z.core.$ZodType[] = open(form);
  for (const step of path) {
    forms = forms.flatMap((here) => {
      const def = here._zod.def as {
        shape?: Record<string, z.core.$ZodType>;
        element?: z.core.$ZodType;
        valueType?: z.core.$ZodType;
      };
      const inner = def.shape?.[String(step)] ?? def.element ?? def.valueType;
      return inner === undefined ? [] : open(inner);
    });
  }
  return forms.flatMap((here) => Object.keys((here._zod.def as { shape?: object }).shape ?? {}));
}

/** A form without its wrappers (optional, default, transform), and every branch of a choice. */
function open(form: z.core.$ZodType): readonly z.core.$ZodType[] {
  const def = form._zod.def as {
    innerType?: z.core.$ZodType;
    in?: z.core.$ZodType;
    options?: readonly z.core.$ZodType[];
  };
  if (def.innerType !== undefined) return open(def.innerType);
  if (def.in !== undefined) return open(def.in);
  if (def.options !== undefined) return def.options.flatMap(open);
  return [form];
}
